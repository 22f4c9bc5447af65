// SPDX-License-Identifier: MIT
// Filling some of a job's rolls with some of its pieces, and what the result is judged by. Inside
// order/ only.
#pragma once

#include "model/plan.hpp"
#include "model/stock.hpp"
#include "nest/nest.hpp"
#include "order/purchase.hpp"

#include <array>
#include <cstdint>
#include <vector>

namespace pelt::order {

/// By piece of the job: which of its copies.
using Copies = std::vector<std::vector<std::size_t>>;
Copies all_copies(const Job& job);

/// As many new rolls as the pieces could ever need: one each, or a single endless one where film
/// has no price.
std::vector<Roll> new_rolls(const Film& film, const std::vector<Piece>& pieces);

/// Places these copies on these rolls (indices into the job's). The layout and the misfits speak of
/// the job's own pieces, copies and rolls.
nest::Result fill(const Job& job, const Copies& copies, const std::vector<std::size_t>& rolls,
                  const nest::Effort& effort, const nest::Watch& watch);

/// On the first of these rolls, cut to these lengths.
nest::Result fill_lengths(const Job& job, const Copies& copies,
                          const std::vector<std::size_t>& rolls, const std::vector<Um>& lengths,
                          const nest::Effort& effort, const nest::Watch& watch);

/// The same on stock alone, taking as little off it as on new film; nothing is proved of it then.
nest::Result fill_tightly(const Job& job, const Copies& copies,
                          const std::vector<std::size_t>& rolls, const nest::Effort& effort,
                          const nest::Watch& watch);

/// On one of the job's rolls as if it were new and so long; none: without end.
nest::Result fill_one(const Job& job, const Copies& copies, std::size_t roll,
                      std::optional<Um> available, const nest::Effort& effort,
                      const nest::Watch& watch);

/// The same watch, told what the search is for.
nest::Watch while_doing(std::string_view doing, const nest::Watch& watch);

/// All pieces on new film.
nest::Result fill(const Job& job, const nest::Effort& effort, const nest::Watch& watch);

/// What a layout is judged by, the least first (design: cost of what is taken, then new length,
/// rolls, last roll's length, cuts).
using Score = std::array<std::int64_t, 5>;

/// `costs`: of the job's first rolls, which are from stock. `spare`: film to buy besides, where new
/// film is bought at all.
Score judged(const Job& job, const std::vector<CostOfLength>& costs, const SpareToBuy& spare,
             const Layout& layout);

} // namespace pelt::order
