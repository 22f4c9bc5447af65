// SPDX-License-Identifier: MIT
// Where one shape may not stand beside another: the Minkowski difference of two unions of convex
// parts, as the segments of its boundary.
#pragma once

#include "nest/contour/convex_parts.hpp"
#include "nest/contour/vec.hpp"

#include <vector>

namespace pelt::nest::contour {

/// A piece of the boundary; the forbidden region lies on its left.
struct Segment {
    Vec from;
    Vec to;
};

/// Boundary of { p : (moving + p) overlaps fixed }. Where the moving shape just fits a slot of the
/// fixed one, the slot stays as two segments on top of each other.
std::vector<Segment> forbidden_boundary(const Body& fixed, const Body& moving);

} // namespace pelt::nest::contour
