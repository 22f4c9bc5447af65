// SPDX-License-Identifier: MIT
// One panel on its way from blank to pieces: everything about it, settled once. Inside piece/ only.
#pragma once

#include "model/blank.hpp"
#include "model/film.hpp"
#include "model/vehicle.hpp"
#include "piece/allowed.hpp"
#include "piece/cells.hpp"
#include "piece/piece.hpp"

#include <optional>
#include <vector>

namespace pelt::piece {

struct PanelJob {
    const Panel* panel = nullptr;
    const Blank* blank = nullptr;
    CutBy by = CutBy::straight;
    Allowed allowed;
    Allowed placing; ///< with the margins by which seams are placed
    Heading heading = Heading::right;
    Stand stand;
    Cell whole;      ///< undivided, piece frame
    Polygon outline; ///< of the panel, piece frame
    DoubleArea outline_area = 0;
    std::vector<Box> keep_clear;  ///< places in it that must stay clear, piece frame
    Um least_piece = 0;           ///< the film's
    bool may_add_seams = true;    ///< neither the panel nor the wishes forbid them
    bool weighs_every_way = false; ///< `--seams thrifty`

    Box outline_box() const { return box_of(outline.outer); }
};

/// Settles allowances, forward, tucks, stops, openings and recesses; warns of what was not given.
/// None: `faults` says why.
std::optional<PanelJob> job_for(const Panel& panel, const Blank& blank, const Film& film,
                                const Wishes& wishes, Faults& faults);

} // namespace pelt::piece
