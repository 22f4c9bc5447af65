// SPDX-License-Identifier: MIT
// Which way each panel is cut: whole or split, and where. Inside order/ only.
#pragma once

#include "nest/nest.hpp"
#include "order/order.hpp"
#include "piece/piece.hpp"

#include <cstddef>
#include <vector>

namespace pelt::order {

/// One panel's ways to be cut, less what is left out.
using Ways = std::vector<piece::Way>;

/// Which way each panel is cut: an index into its ways.
using Choice = std::vector<std::size_t>;

/// Gives the job the pieces, seams and rolls that follow.
void choose(Job& job, const std::vector<Ways>& panels, const Choice& choice);

/// Settles the panels one after the other by quick trial layouts. Trials of one panel run side by
/// side where there are processors; that never changes the choice.
Choice best_choice(const Job& job, const std::vector<Ways>& panels, const Request& request);

} // namespace pelt::order
