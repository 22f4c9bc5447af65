// SPDX-License-Identifier: MIT
// Straight cutting: the roll is only ever divided from edge to edge, so pieces are rectangles and
// every layout is a tree of cuts.
//
// In this folder: problem (pieces and rolls in whole ruler steps), tree (the cuts of a layout and
// how one more rectangle goes in), search (which rectangle goes where), block (a finished tree as
// a value), emit (a finished tree as placements and cuts), bounds/ (what no layout can undercut).
#pragma once

#include "nest/nest.hpp"

namespace pelt::nest::straight {

/// As `nest::nest`, for `CutBy::straight`. Every shape's outline must be an upright rectangle and
/// every turn a quarter turn; ProgramError otherwise.
Result nest(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch);

} // namespace pelt::nest::straight
