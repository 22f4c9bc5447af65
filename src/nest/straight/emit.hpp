// SPDX-License-Identifier: MIT
// A finished layout as a person cuts it: placements in the order in which they come free, cuts in
// the order in which they are made.
#pragma once

#include "nest/straight/block.hpp"

#include <span>

namespace pelt::nest::straight {

/// The cuts of one section after the other: it is cut off the roll, slit along the trims that it
/// needs, then divided from its near edge, each part taken to its end before the next one.
/// Members of a kind are given out in the order in which they come free.
std::vector<UsedRoll> used_rolls(const Problem& problem, const Sheet& sheet,
                                 std::span<const Piece> pieces, std::span<const Roll> rolls);

} // namespace pelt::nest::straight
