// SPDX-License-Identifier: MIT
// Exact integer geometry of the check. Coordinates of one pair of pieces differ by less than 2^27
// micrometres (134 m), so squares of cross products stay under 2^112. Inside verify/ only.
#pragma once

#include "model/polygon.hpp"

#include <vector>

namespace pelt::verify {

/// The ring turned by whole quarters exactly; other turns are rounded to the grid from long double.
Ring lying(const Ring& ring, Turn turn, GridPoint by);

/// Twice the signed area.
Int128 twice_area(const Ring& ring);

/// No edge crosses or touches another one, but neighbours at their shared corner.
bool is_simple(const Ring& ring);

enum class Where { inside, on_rim, outside };
Where where(GridPoint point, const Ring& ring);
/// Inside the outer ring and in none of the holes; a hole's rim is the polygon's rim.
Where where(GridPoint point, const Polygon& polygon);

/// The square of the least distance is at least `gap` squared.
bool segments_apart(GridPoint a, GridPoint b, GridPoint c, GridPoint d, Um gap);

/// No point of one lies within `gap` of the other; with gap 0 they may touch but not overlap.
bool polygons_apart(const Polygon& a, const Polygon& b, Um gap);

/// Every point of `inner` lies in or on `outer`, whose holes count as not there.
bool ring_within(const Ring& inner, const Polygon& outer);

/// All rings of a polygon, the outer one first.
std::vector<const Ring*> rings_of(const Polygon& polygon);

} // namespace pelt::verify
