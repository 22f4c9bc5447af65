// SPDX-License-Identifier: MIT
// From what a job takes to the price that the customer sees. Inside order/ only. Decimal money;
// every line is rounded to the currency's minor unit (ISO 4217), a half up, before lines are added.
#pragma once

#include "model/quote.hpp"
#include "model/shop.hpp"

#include <optional>

namespace pelt::order {

/// What goes into a price, without tax. None: not known, and left out.
struct Costs {
    std::optional<Money> film;        ///< purchase price
    std::optional<Money> consumables; ///< purchase price
    double minutes = 0;               ///< of one person
};

/// The price of a job: film and consumables with their mark-up, labor by the hour; brought up to
/// the minimum; tax once on what it is reckoned on; rounded, the net price worked back, so that
/// net and tax add up to the total. `digits` are the decimals of the currency's minor unit.
Price price_of(const Costs& costs, const Shop& shop, const std::string& currency, int digits);

/// To the minor unit, a half up.
Money to_minor_unit(Money amount, int digits);

} // namespace pelt::order
