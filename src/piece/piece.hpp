// SPDX-License-Identifier: MIT
// From blanks to pieces: tucks, stops, openings, margins, the ruler, mirroring; then the grid.
#pragma once

#include "model/blank.hpp"
#include "model/film.hpp"
#include "model/piece.hpp"

#include <vector>

namespace pelt::piece {

/// The wishes that shape pieces, besides the files.
struct Wishes {
    CutBy by = CutBy::straight;
    int times = 1;
    std::vector<std::string> left_on; ///< hardware that stays on (`--leave`)
    bool split = true;                ///< `--seams auto`: panels that are too wide may be split
};

/// One way to cut a panel: its pieces, for one side after the other, and the seams between them.
struct Way {
    std::vector<Piece> pieces;
    std::vector<Seam> seams;
};

/// Every way worth trying to cut one panel, the plain one first; a few at most. Empty when there
/// is none: then `faults` says why (severity job where the film is too narrow).
/// `vehicle_index` and `panel_index` go into the ids.
std::vector<Way> ways_to_cut(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                             const Wishes& wishes, int vehicle_index, int panel_index,
                             Faults& faults);

} // namespace pelt::piece
