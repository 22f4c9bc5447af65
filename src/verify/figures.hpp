// SPDX-License-Identifier: MIT
// Whole polygons beside and within one another. Inside verify/ only.
#pragma once

#include "verify/rim.hpp"

namespace pelt::verify {

/// The rings bound one region with film to the left of every edge and none to the right: the outer
/// ring runs counter-clockwise, holes clockwise inside it and apart, no ring crosses itself or
/// another one. They may touch at points: cutting along them still gives the region.
bool is_sound(const Polygon& polygon);

/// No edge of the ring crosses or touches another one, but neighbours at their shared corner.
bool is_simple(const Ring& ring);

/// No point of one lies nearer than `gap` to the other. With gap 0 they may touch, not overlap.
bool apart(const Rim& a, const Rim& b, Um gap);
bool polygons_apart(const Polygon& a, const Polygon& b, Um gap);

/// `inner` runs nowhere more than `slack` (rounding) out of `outer`. Where an edge of one crosses
/// the other, the stretches between the crossings are tried in their middles, at whole
/// micrometres.
bool within(const Rim& inner, const Rim& outer, Um slack);

} // namespace pelt::verify
