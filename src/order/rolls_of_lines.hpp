// SPDX-License-Identifier: MIT
// Which line to buy for each roll, and which rolls besides for spare alone, so that the sum is long
// enough and nothing is cheaper. Inside order/ only.
//
// Roll by roll all ways are kept of which no other one is both cheaper and longer (a dynamic
// programme over totals). Rolls for spare alone are added one by one until nothing cheaper can come
// of it, so there may be any number of them.
#pragma once

#include "order/purchase.hpp"

#include <optional>
#include <vector>

namespace pelt::order {

/// `choices` holds the lines of each roll, `extra` those of a roll for spare alone. The cheapest
/// that is at least `least` long in all; of equally cheap ones the longest of those with fewest
/// rolls. None where nothing is long enough.
std::optional<Purchase> cheapest_of(const std::vector<std::vector<OrderLine>>& choices,
                                    const std::vector<OrderLine>& extra, Length least);

} // namespace pelt::order
