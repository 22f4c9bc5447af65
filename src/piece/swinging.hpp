// SPDX-License-Identifier: MIT
// The film of a panel whose readings are off: what its tucks' corners do. Inside piece/ only.
#pragma once

#include "model/blank.hpp"
#include "piece/piece.hpp"

#include <optional>
#include <vector>

namespace pelt::piece {

/// A panel's outline with the moves of its sides, millimetres.
struct TuckedOutline {
    TaggedRing outline;
    std::vector<double> moves;
};

/// None where the readings make no panel.
std::optional<TuckedOutline> tucked_outline(const Panel& panel, const Film& film,
                                            const Wishes& wishes);

/// How far, any way, a corner of the film comes to lie outside of the film as read, when the
/// readings around that corner are off by up to `error_mm`: a pointed corner of two tucks swings
/// farther than its sides. A crown's rises are left as they are.
double corners_outside(Panel panel, const Film& film, const Wishes& wishes, double error_mm);

} // namespace pelt::piece
