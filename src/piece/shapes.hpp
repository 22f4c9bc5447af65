// SPDX-License-Identifier: MIT
// From film that stays on to what is cut from the roll. Inside piece/ only.
#pragma once

#include "model/piece.hpp"
#include "piece/allowed.hpp"

#include <vector>

namespace pelt::piece {

/// Film for one piece, piece frame.
struct Part {
    Polygon wrapped;             ///< what stays on the vehicle
    Polygon sheet;               ///< the same before anything is cut out on the vehicle
    std::vector<Ring> seam_ends; ///< where a side of `sheet` lies on one of these, it is a seam's
};

/// Straight cutting: the rectangles with their margins, one for every distinct way of lying that
/// the usable width takes; none when it takes none. Sides are rounded up to the ruler; where the
/// margins wanted do not fit across the roll but the least ones do, that side is the usable width;
/// where that is no whole step, the next whole step follows as a way for rolls that are wider.
std::vector<CutShape> straight_shapes(const Box& wrapped, const Allowed& allowed);

/// Contour cutting: the sheet grown by the bleed (not on seam edges), in every turn that the
/// direction allows; none when the usable width takes it in none of them, nor askew where that is
/// allowed.
std::vector<CutShape> contour_shapes(const Part& part, const Allowed& allowed);

std::vector<CutShape> shapes_of(const Part& part, const Allowed& allowed, CutBy by);

/// The widest film, across the roll and finished, that straight cutting takes in one piece with
/// the margins that are wanted, and with the least ones.
struct WidestFilm {
    Um wanted = 0;
    Um most = 0;
};
WidestFilm widest_straight(const Allowed& allowed);

} // namespace pelt::piece
