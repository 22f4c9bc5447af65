// SPDX-License-Identifier: MIT
// Which pieces are cut again from offcuts. Inside order/ only.
#pragma once

#include "model/plan.hpp"
#include "order/spare.hpp"

#include <utility>
#include <vector>

namespace pelt::order {

/// Alike pieces of one panel, as a remake of each costs.
struct KindOfPiece {
    std::pair<int, int> panel; ///< vehicle, panel
    Remakes remakes;
    std::vector<const Piece*> pieces; ///< of the job
};

/// Of every panel by what a remake costs, in the files' order. `layout`: its offcuts that are worth
/// keeping are reserved beforehand, each for the one kind of piece it holds of which it is likely to
/// save most film; none: nothing is reserved.
std::vector<KindOfPiece> kinds_of(const Job& job, const Layout* layout);

/// The probability that so many pieces, each spoiled with that chance and its remakes too, take
/// exactly 0, 1, … remakes, the first `terms`; empty where the first is too small for a double.
std::vector<double> remakes_needed(std::size_t pieces, double chance, std::size_t terms);

} // namespace pelt::order
