// SPDX-License-Identifier: MIT
#include "order/purchase.hpp"

#include <algorithm>

namespace pelt::order {
namespace {

/// How many of an offer hold `need` in one length.
std::int64_t count_for(const Offer& offer, Um need) {
    const std::int64_t pm = Length::from_um(need).pm();
    return std::max<std::int64_t>(1, (pm + offer.by.pm() - 1) / offer.by.pm());
}

bool on_one_roll(const Film& film, Length length) {
    return !film.roll_length || length <= Length::from_um(*film.roll_length);
}

bool better(const OrderLine& a, const OrderLine& b) {
    const Money cost_a = a.count * *a.price;
    const Money cost_b = b.count * *b.price;
    return cost_a != cost_b ? cost_a < cost_b : a.length() > b.length();
}

} // namespace

std::optional<Um> longest_purchase(const Film& film) {
    if (!film.roll_length || film.sold.empty())
        return film.roll_length;
    Um longest = 0;
    for (const Offer& offer : film.sold) {
        const std::int64_t count = Length::from_um(*film.roll_length).pm() / offer.by.pm();
        longest = std::max(longest, (count * offer.by).floor_um());
    }
    return longest;
}

std::optional<OrderLine> cheapest_purchase(const Film& film, Um need) {
    if (film.sold.empty())
        return OrderLine{Length::from_um(need), 1, std::nullopt, ""};
    std::optional<OrderLine> best;
    for (const Offer& offer : film.sold) {
        const OrderLine line{offer.by, count_for(offer, need), offer.price, ""};
        if (on_one_roll(film, line.length()) && (!best || better(line, *best)))
            best = line;
    }
    return best;
}

} // namespace pelt::order
