// SPDX-License-Identifier: MIT
#include "geometry/mesh/to_triangle.hpp"

#include "geometry/space.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pelt::geometry {

double to_triangle(Point3 p, const std::array<Point3, 3>& corners) {
    const Point3 ab = corners[1] - corners[0];
    const Point3 ac = corners[2] - corners[0];
    const Point3 n = cross(ab, ac);
    const double square = dot(n, n);
    const Point3 ap = p - corners[0];
    const double v = dot(cross(ap, ac), n) / square;
    const double w = dot(cross(ab, ap), n) / square;
    if (v >= 0 && w >= 0 && v + w <= 1)
        return std::abs(dot(ap, n)) / std::sqrt(square);
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t k = 0; k < 3; ++k) {
        const Point3 side = corners[(k + 1) % 3] - corners[k];
        const double share = std::clamp(dot(p - corners[k], side) / dot(side, side), 0.0, 1.0);
        least = std::min(least, distance(p, corners[k] + share * side));
    }
    return least;
}

} // namespace pelt::geometry
