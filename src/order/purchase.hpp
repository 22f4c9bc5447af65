// SPDX-License-Identifier: MIT
// What one uncut length costs, and how long one may be. Inside order/ only.
#pragma once

#include "model/film.hpp"
#include "model/order.hpp"

#include <optional>

namespace pelt::order {

/// The longest length that can be bought uncut: the largest whole number of any offer that is on
/// one roll. None: as long as is wanted. Zero: every offer is longer than the roll.
std::optional<Um> longest_purchase(const Film& film);

/// The cheapest purchase of one uncut length of at least `need`; of equally cheap ones the
/// longest. An order is a whole number of one offer and never longer than a roll. Without offers:
/// the length itself, price unknown. None when no offer reaches.
std::optional<OrderLine> cheapest_purchase(const Film& film, Um need);

} // namespace pelt::order
