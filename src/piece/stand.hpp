// SPDX-License-Identifier: MIT
// How a panel stands on the vehicle, seen in the piece frame: which piece laps over which at a seam,
// where the strips of a divided panel begin, and what its ends are called. Inside piece/ only.
//
// The lap's free edge looks rearward or down, where water and brushes run off it: the forward or
// upper piece lies on top; on a top, along the vehicle, the inner one; on a front or a rear, side by
// side, the left one. Common practice, no source.
#pragma once

#include "model/vehicle.hpp"

#include <array>
#include <cstddef>
#include <string>

namespace pelt::piece {

/// The two axes of the piece frame.
inline constexpr std::size_t x_axis = 0;
inline constexpr std::size_t y_axis = 1;

/// What holds on one axis, for lines that divide it.
struct StandOnAxis {
    int over = 1;       ///< the end whose piece lies on top: 1 high, -1 low, 0 that of the middle
    int first = 1;      ///< the end where strips begin; at the middle, the one that lies on top
    std::string high;   ///< "front": how its ends are called
    std::string low;    ///< "rear"
    std::string runs;   ///< how a line runs that divides it: "upright"
};

struct Stand {
    std::array<StandOnAxis, 2> axes;
    std::size_t level = y_axis; ///< divided by lines along the vehicle, or level ones
    bool faces_end = false;     ///< a front or a rear
};

/// Of a panel whose film's arrow points this way in its drawing.
Stand stand_of(const Panel& panel, Heading heading);

} // namespace pelt::piece
