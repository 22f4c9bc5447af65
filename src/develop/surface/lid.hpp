// SPDX-License-Identifier: MIT
// Holes closed for measuring: film is laid whole, and cut out afterwards. Inside develop/ only.
#pragma once

#include "model/surface.hpp"

#include <vector>

namespace pelt::develop {

/// Triangles that close the hole within a loop of a surface (the surface on the loop's left), of
/// least area together, the stouter ones where areas are equal; no new points. (G. Barequet, M.
/// Sharir 1995: by the best triangle over every stretch of the loop, in the third power of its
/// length.)
std::vector<Triangle> lid_over(const std::vector<Point3>& points, const std::vector<int>& loop);

} // namespace pelt::develop
