// SPDX-License-Identifier: MIT
// Where to put seams that the vehicle file does not have: strips that the film's width takes.
// Inside piece/ only.
#pragma once

#include "model/piece.hpp"
#include "piece/allowed.hpp"
#include "piece/divide.hpp"

#include <vector>

namespace pelt::piece {

/// Film to be divided, piece frame.
struct TooWide {
    Box film;  ///< what has to be covered, tucks and all
    Box panel; ///< the panel's outline: seams are placed in whole millimetres from its edges
};

/// The ways worth trying, the fewest seams that do, each as its lines: strips of equal width; the
/// widest strips that the film gives with a narrow one at either side, or at both. Strips run along
/// the roll, or, where film may be turned, across it. A heuristic: seams are straight and parallel;
/// `order` lets the nest judge. Empty when even strips do not help.
std::vector<std::vector<Divide>> strips(const TooWide& job, const Allowed& allowed, CutBy by,
                                        Heading heading);

} // namespace pelt::piece
