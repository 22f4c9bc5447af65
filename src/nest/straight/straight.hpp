// SPDX-License-Identifier: MIT
// Straight cutting: the roll is only ever divided from edge to edge, so pieces are rectangles and
// every layout is a tree of cuts.
//
// In this folder:
//   problem    pieces and rolls in whole ruler steps
//   tree       the cuts of a layout in the making, and how one more rectangle goes in
//   block      a finished layout as a value
//   search     which rectangle goes where: pieces are taken out and put back
//   recut      a few sections cut anew in the best of all ways
//   run        both by turns, on eight strands, until the effort is spent or nothing is shorter
//   patterns, many   strips that repeat, where there are many pieces of few kinds
//   in_order   strips that keep to the order of laying
//   ease       order and cuts among layouts of one length
//   emit       a finished layout as placements and cuts
//   bounds/    what no layout can undercut
//   exact/     every way of cutting a small job
#pragma once

#include "nest/nest.hpp"

namespace pelt::nest::straight {

/// As `nest::nest`, for `CutBy::straight`. Every shape's outline must be an upright rectangle and
/// every turn a quarter turn; ProgramError otherwise.
Result nest(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch);

} // namespace pelt::nest::straight
