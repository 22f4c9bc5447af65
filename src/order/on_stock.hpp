// SPDX-License-Identifier: MIT
// Laying pieces on stock alone. Inside order/ only.
#pragma once

#include "order/batches.hpp"

#include <optional>

namespace pelt::order {

/// Whether there is film enough, flaws and all.
bool may_hold(const Job& job, const Rolls& rolls, const Copies& copies);

/// On a single roll where one holds everything, the shortest first; else on all of them. None where
/// no place was found.
std::optional<Layout> on_fewest(const Job& job, const Copies& copies, Rolls rolls,
                                const nest::Effort& effort, const nest::Watch& watch);

} // namespace pelt::order
