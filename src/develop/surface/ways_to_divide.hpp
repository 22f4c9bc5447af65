// SPDX-License-Identifier: MIT
// Where a panel might be divided: places to try, not yet judged. Inside develop/ only.
#pragma once

#include "develop/surface/slit.hpp"
#include "model/division.hpp"

#include <vector>

namespace pelt::develop {

struct WayToDivide {
    Division::Kind kind = Division::Kind::seam;
    bool own_lines = false;
    std::vector<Slit> slits;
};

/// In a layout: its outline, and the place of most stretch.
struct PlaceToDivide {
    std::vector<Point> outline;
    Point peak;
    std::vector<std::vector<Point>> own_lines; ///< the panel's seam lines
};

/// The panel's own lines; seams straight across the layout, through the middle and the place of
/// most stretch in eight ways and beside them; strips, stars and gratings of up to eight pieces;
/// relief cuts a third, a half, two thirds and nine tenths of the way to the middle, single, in
/// pairs and fours. In no order.
std::vector<WayToDivide> ways_to_divide(const PlaceToDivide& place);

} // namespace pelt::develop
