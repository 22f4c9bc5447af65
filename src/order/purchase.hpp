// SPDX-License-Identifier: MIT
// What uncut lengths cost, and how long one may be. Inside order/ only.
//
// A purchase is one line a roll: a whole number of one offer, within what the offer sells and the
// roll holds. Why the cheapest one is found: of one offer the fewest that reach a length are the
// cheapest, since its price does not fall with the number; without spare film the rolls have
// nothing to do with one another, so the cheapest line of each is the cheapest order. With spare
// the total counts as well (rolls_of_lines.hpp).
#pragma once

#include "model/film.hpp"
#include "model/order.hpp"

#include <optional>
#include <vector>

namespace pelt::order {

/// The longest length that can be bought uncut. None: as long as is wanted. Zero: every offer is
/// longer than the roll.
std::optional<Um> longest_purchase(const Film& film);

/// A length as rolls: as long as one may be, and one for the rest.
std::vector<Um> lengths_for(const Film& film, Um length);

/// The cheapest purchase of one uncut length of at least `need`; of equally cheap ones the
/// longest. Without offers: the length itself, price unknown. None when no offer reaches.
std::optional<OrderLine> cheapest_purchase(const Film& film, Um need);

/// All lines of at least `need` of which no other one is both cheaper and longer, but none longer
/// than the first that reaches `most`.
std::vector<OrderLine> lines_for(const Film& film, Um need, Um most);

/// Film to buy besides what the pieces take.
struct SpareToBuy {
    Um length = 0; ///< in all
    Um in_one = 1; ///< what a roll for spare alone must hold, or no remake fits on it
};

struct Purchase {
    std::vector<OrderLine> lines; ///< of the rolls, in their order; then of rolls for spare alone
    std::optional<Money> cost;    ///< none: prices not known
    bool cheapest = true; ///< proved of these lengths; false where too many ways were left unseen
    Length length() const;
};

/// The cheapest purchase of rolls of at least these lengths, with at least `spare` more in all; of
/// equally cheap ones the longest. None when no offer reaches.
std::optional<Purchase> cheapest_order(const Film& film, const std::vector<Um>& lengths,
                                       const SpareToBuy& spare);

/// What any rolls cost at least that are together so long; none: not known.
std::optional<Money> least_cost(const Film& film, Um length);

/// The cheapest one of which at least one roll is bought by another offer, or the spare on a roll
/// of its own by an offer that the best one does not take. None where there is none, or no prices
/// are known.
std::optional<Purchase> next_best_order(const Film& film, const std::vector<Um>& lengths,
                                        const SpareToBuy& spare, const Purchase& best);

} // namespace pelt::order
