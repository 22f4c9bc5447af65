// SPDX-License-Identifier: MIT
// Which rolls on the shelf go together, and how much they could hold. Inside order/ only.
#pragma once

#include "order/shelf.hpp"

#include <string>
#include <vector>

namespace pelt::order {

using Rolls = std::vector<std::size_t>; ///< indices into a job's rolls; the shelf's come first

struct Batch {
    std::string name; ///< empty: not known, a single roll
    Rolls rolls;
};

/// In the order of the shelf.
std::vector<Batch> batches_of(const Shelf& shelf);

/// All of the rolls, then ever fewer: the dearest are left out first.
std::vector<Rolls> ever_cheaper(const Shelf& shelf, Rolls rolls);

/// Those of the stock that are not among the rolls, the last one first.
Rolls left_behind(const Rolls& stock, const Rolls& rolls);

/// New film is then of that batch; of a roll whose batch is not known, "that of stock A".
void name_the_batch(Job& job, const Batch& batch);

/// Twice the usable area, flaws and all.
DoubleArea area_of(const Job& job, const Rolls& rolls);

/// Twice the area that the copies take at least.
DoubleArea least_area(const Job& job, const Copies& copies);
/// No piece of these takes less of a roll's length, however it may lie.
Um least_along(const Job& job, const Copies& copies);

} // namespace pelt::order
