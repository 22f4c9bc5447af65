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
    Heading heading = Heading::right;
    Cell whole;      ///< undivided, piece frame
    Polygon outline; ///< of the panel, piece frame
    DoubleArea outline_area = 0;
    bool may_add_seams = true; ///< neither the panel nor the wishes forbid them

    Box outline_box() const { return box_of(outline.outer); }
};

/// Settles allowances, forward, tucks, stops, openings and recesses; warns of what was not given.
/// None: `faults` says why.
std::optional<PanelJob> job_for(const Panel& panel, const Blank& blank, const Film& film,
                                const Wishes& wishes, Faults& faults);

} // namespace pelt::piece
