// SPDX-License-Identifier: MIT
// A surface of disc shape laid flat in the best ways. Inside develop/ only.
#pragma once

#include "develop/surface/patch.hpp"
#include "model/polygon.hpp"
#include "model/surface.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::develop {

/// A surface without holes: its own triangles first, then the lids of its openings.
struct Sheet3 {
    std::vector<Point3> points;
    std::vector<Triangle> triangles;
    std::size_t own = 0;        ///< how many triangles are the surface's own
    std::vector<int> outline;   ///< the loop around it
    std::vector<int> rims = {}; ///< the points around its openings
    double trusted = 1;         ///< see Patch
};

/// Largest film stretches as shares: 0.09 is 9 %.
struct Flattened {
    Patch patch;
    Flat least; ///< the layout of least stretch
    double least_stretch = 0;
    Flat natural;               ///< as film lies down by itself
    double natural_stretch = 0; ///< over the surface's own triangles
};

/// None where a triangle would be turned over or the equations cannot be solved: the surface needs
/// a cut.
std::optional<Flattened> flattened(const Sheet3& sheet);

/// The layout of least stretch alone, for those who compare many surfaces.
struct LaidLeast {
    Patch patch;
    Flat flat;
    double stretch = 0;
};
std::optional<LaidLeast> laid_least(const Sheet3& sheet);

/// A loop of points as the layout has it.
std::vector<Point> outline_in(const Flat& flat, const std::vector<int>& loop);

/// The layout to cut for film that stretches by `limit` at most: natural where that is enough, else
/// within the limit, else that of least stretch.
Flat layout_within(const Flattened& flattened, double limit);

} // namespace pelt::develop
