// SPDX-License-Identifier: MIT
// What a job uses up. Inside order/ only.
#pragma once

#include "model/quote.hpp"
#include "model/shop.hpp"
#include "order/work.hpp"

#include <vector>

namespace pelt::order {

/// Of what drives each; what the job does not use is left out. Costs are of what is reckoned to be
/// taken, where the shop has a price.
std::vector<ConsumableNeed> consumables_of(const Drivers& drivers, const Shop& shop);

} // namespace pelt::order
