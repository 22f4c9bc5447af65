// SPDX-License-Identifier: MIT
// A panel's surface in space: one connected piece of triangles, millimetres, in the scan's frame.
#pragma once

#include <array>
#include <vector>

namespace pelt {

/// A point or a vector in space, millimetres.
struct Point3 {
    double x = 0;
    double y = 0;
    double z = 0;
    friend bool operator==(const Point3&, const Point3&) = default;
};

/// Three indices into the points, counter-clockwise as seen from outside.
using Triangle = std::array<int, 3>;

/// A disc, with holes or without: connected, orientable, no edge with more than two triangles.
struct Surface {
    std::vector<Point3> points;
    std::vector<Triangle> triangles;
    std::vector<std::vector<int>> loops; ///< of the boundary, the surface on their left; the
                                         ///< longest first: the outline, then the holes
};

} // namespace pelt
