// SPDX-License-Identifier: MIT
// Where seams may go that the vehicle file does not have, whatever film they save: strips that the
// film's width takes. Inside piece/ only.
#pragma once

#include "piece/stretch.hpp"

#include <vector>

namespace pelt::piece {

/// The ways worth trying, the fewest seams that do, each as its lines: strips of equal width; the
/// widest strips that the film gives with a narrow one at either side, or at both. Strips run along
/// the roll, or, where film may be turned, across it. A heuristic: seams are straight and parallel;
/// `order` lets the nest judge. Empty when even strips do not help.
std::vector<std::vector<Divide>> strips(const TooWide& job, const Stand& stand,
                                        const Allowed& allowed, CutBy by);

} // namespace pelt::piece
