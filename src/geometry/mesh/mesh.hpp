// SPDX-License-Identifier: MIT
// From the triangles of a scan to one surface of disc shape.
#pragma once

#include "model/surface.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::geometry {

/// Points and triangles as a file gives them, in any order and of any quality; indices are valid,
/// coordinates finite.
struct Mesh {
    std::vector<Point3> points;
    std::vector<Triangle> triangles;
};

/// A surface, or in words what hinders.
struct SurfaceFound {
    std::optional<Surface> surface;
    std::string what;   ///< without a surface: what is wrong with the scan, to follow its name
    std::string remedy; ///< and what to do
    std::vector<std::string> remarks; ///< what was mended or left out, to follow its name
};

/// Welds the mesh, turns its triangles to one side (that of most of them), keeps the part of the
/// largest area, and finds its loops. Wrong are: nothing left; three triangles at an edge; a
/// surface of one side only; a second part of more than a twentieth of the area; no boundary;
/// tunnels; a hole whose rim is longer than half the outline (a ring, which needs a cut).
SurfaceFound surface_of(Mesh mesh);

/// The area of some triangles.
double area_of(const std::vector<Point3>& points, const std::vector<Triangle>& triangles);

/// The closed line through points of a surface: its length.
double length_of(const std::vector<Point3>& points, const std::vector<int>& loop);

/// The closed boundary lines of oriented triangles, the surface on their left, the longest first.
/// Every point is on one loop, once, at most.
std::vector<std::vector<int>> loops_of(const std::vector<Point3>& points,
                                       const std::vector<Triangle>& triangles);

} // namespace pelt::geometry
