// SPDX-License-Identifier: MIT
// Trials of several ways to divide panels. Inside order/ only.
#pragma once

#include "nest/nest.hpp"
#include "order/order.hpp"
#include "piece/piece.hpp"

#include <cstddef>
#include <vector>

namespace pelt::order {

/// One panel's ways to be cut.
using Ways = std::vector<piece::Way>;

/// Which way each panel is cut: an index into its ways.
using Choice = std::vector<std::size_t>;

/// Gives the job these pieces and seams.
void set_pieces(Job& job, const std::vector<piece::Way>& ways);

/// Gives a job with pieces what follows of them: their order, their places in laying, its rolls.
void set_rolls(Job& job);

/// Settles the panels one after the other by quick trial layouts on new film, always the same ones
/// whatever effort is asked for. Trials of one panel run side by side where there are processors;
/// that never changes the choice.
Choice best_choice(const Job& job, const std::vector<Ways>& panels, const Request& request);

/// Whether one choice takes less than the other, laid out as at the least effort.
bool is_shorter(const Job& job, const std::vector<Ways>& panels, const Choice& choice,
                const Choice& than, const Request& request);

} // namespace pelt::order
