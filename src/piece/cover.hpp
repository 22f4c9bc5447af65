// SPDX-License-Identifier: MIT
// The film that covers one panel, on the grid, in the panel's frame. Inside piece/ only.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"
#include "piece/edge_work.hpp"

#include <optional>

namespace pelt::piece {

struct Cover {
    Polygon wrapped; ///< what stays on the vehicle
    Polygon sheet;   ///< the same before anything is cut out on the vehicle
};

/// Grows the outline, takes off the stops, cuts out the openings and, along their size, the inlays.
/// When the stops leave more than one part, the largest is kept; a second one over a thousandth of
/// the panel is a fault, smaller ones a note. None: nothing is left, or a fault.
std::optional<Cover> cover(const Panel& panel, const Blank& blank, const Work& work,
                           Faults& faults);

} // namespace pelt::piece
