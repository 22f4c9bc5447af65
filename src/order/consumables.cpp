// SPDX-License-Identifier: MIT
#include "order/consumables.hpp"

#include "trade/used_up.hpp"

#include <cmath>

namespace pelt::order {
namespace {

double amount_of(trade::UsedBy by, const Drivers& drivers) {
    switch (by) {
    case trade::UsedBy::area:
        return drivers.covered_m2;
    case trade::UsedBy::old_film:
        return drivers.old_film_m2;
    case trade::UsedBy::pieces:
        return drivers.pieces;
    case trade::UsedBy::hard_edges:
        return drivers.over_the_limit_m;
    case trade::UsedBy::cut_out:
        return drivers.cut_out_m;
    case trade::UsedBy::clips:
        return drivers.clips;
    case trade::UsedBy::badges:
        return drivers.badges;
    }
    return 0;
}

/// In thousandths, rounded up to what is counted: whole things, tenths of what is measured out.
std::int64_t rounded_up(double amount, const trade::Consumable& what) {
    const bool whole = what.unit.empty() || what.unit == "rolls" || what.unit == "pairs" ||
                       what.unit == "g" || what.unit == "ml";
    const std::int64_t step = whole ? 1'000 : 100;
    return static_cast<std::int64_t>(std::ceil(amount * 1'000 / static_cast<double>(step) - 1e-9)) *
           step;
}

Money cost_of(std::int64_t thousandths, Money price, double priced_for) {
    const auto per = static_cast<std::int64_t>(priced_for) * 1'000;
    return Money::from_micros(
        static_cast<std::int64_t>((Int128{price.micros()} * thousandths + per / 2) / per));
}

} // namespace

std::vector<ConsumableNeed> consumables_of(const Drivers& drivers, const Shop& shop) {
    std::vector<ConsumableNeed> out;
    for (const trade::Consumable& what : trade::consumables()) {
        const double amount = amount_of(what.by, drivers);
        if (amount <= 0)
            continue;
        ConsumableNeed need;
        need.name = what.name;
        need.unit = what.unit;
        need.low = rounded_up(amount * what.low, what);
        need.taken = rounded_up(amount * (what.low + (what.high - what.low) / 4), what);
        need.high = rounded_up(amount * what.high, what);
        if (const auto price = shop.prices.find(need.name); price != shop.prices.end())
            need.cost = cost_of(need.taken, price->second, what.priced_for);
        out.push_back(std::move(need));
    }
    return out;
}

} // namespace pelt::order
