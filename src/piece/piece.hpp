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
};

/// The pieces of one panel, on one side after the other. `vehicle` and `panel` index the ids.
/// What cannot be made is added to `faults`.
std::vector<Piece> pieces_of(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                             const Wishes& wishes, int vehicle_index, int panel_index,
                             Faults& faults);

} // namespace pelt::piece
