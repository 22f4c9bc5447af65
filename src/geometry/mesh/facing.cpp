// SPDX-License-Identifier: MIT
#include "geometry/mesh/facing.hpp"

#include "geometry/mesh/mesh.hpp"
#include "geometry/space.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::geometry {
namespace {

/// Of the line, not of its points: scanners give them as densely as they like.
Point3 middle_of(const std::vector<Point3>& points, const std::vector<int>& loop) {
    Point3 sum;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point3 a = points[static_cast<std::size_t>(loop[i])];
        const Point3 b = points[static_cast<std::size_t>(loop[(i + 1) % loop.size()])];
        sum = sum + (distance(a, b) / 2) * (a + b);
    }
    return (1 / length_of(points, loop)) * sum;
}

} // namespace

Facing facing_of(const Surface& surface) {
    Point3 doubled;
    Point3 moment;
    double area = 0;
    for (const Triangle& t : surface.triangles) {
        const auto at = [&](std::size_t k) {
            return surface.points[static_cast<std::size_t>(t[k])];
        };
        const Point3 normal = cross(at(1) - at(0), at(2) - at(0));
        doubled = doubled + normal;
        area += norm(normal) / 2;
        moment = moment + (norm(normal) / 6) * (at(0) + at(1) + at(2));
    }
    Facing out;
    out.normal = unit(doubled);
    out.share = norm(doubled) / (2 * area);
    const Point3 rim = middle_of(surface.points, surface.loops.front());
    out.bulge = dot((1 / area) * moment - rim, out.normal) / std::sqrt(area);
    return out;
}

void turn_inside_out(Surface& surface) {
    for (Triangle& t : surface.triangles)
        std::swap(t[1], t[2]);
    for (std::vector<int>& loop : surface.loops)
        std::reverse(loop.begin(), loop.end());
}

} // namespace pelt::geometry
