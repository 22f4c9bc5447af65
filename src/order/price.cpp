// SPDX-License-Identifier: MIT
#include "order/price.hpp"

#include "model/length.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::order {
namespace {

std::int64_t minor_unit(int digits) {
    std::int64_t unit = Money::per_unit;
    for (int i = 0; i < digits && unit > 1; ++i)
        unit /= 10;
    return unit;
}

/// To a multiple of `step`, a half up.
Money rounded_to(Money amount, std::int64_t step) {
    const bool below = amount < Money{};
    const std::int64_t size = below ? -amount.micros() : amount.micros();
    const std::int64_t steps = (size + step / 2) / step;
    return Money::from_micros((below ? -steps : steps) * step);
}

/// Of an hourly rate. Hours are an estimate: they are taken to the second, then exact.
Money of_hours(Money rate, double minutes) {
    const auto seconds = static_cast<Int128>(std::llround(minutes * 60));
    constexpr std::int64_t an_hour = 3600;
    return Money::from_micros(
        static_cast<std::int64_t>((Int128{rate.micros()} * seconds + an_hour / 2) / an_hour));
}

/// Net and taxes for an adjustment.
class Sum {
public:
    Sum(const Price& lines, const Shop& shop, int digits)
        : lines_(lines), shop_(shop), digits_(digits) {}

    Money net(Money adjustment) const {
        return lines_.film.value_or(Money{}) + lines_.consumables.value_or(Money{}) +
               lines_.labor.value_or(Money{}) + adjustment;
    }

    Money on(TaxOn on, Money adjustment) const {
        switch (on) {
        case TaxOn::all:
            return net(adjustment);
        case TaxOn::film:
            return lines_.film.value_or(Money{});
        case TaxOn::labor:
            return lines_.labor.value_or(Money{});
        }
        return Money{};
    }

    std::vector<TaxLine> taxes(Money adjustment) const {
        std::vector<TaxLine> out;
        for (const Tax& tax : shop_.taxes)
            out.push_back({tax.name, to_minor_unit(tax.rate.of(on(tax.on, adjustment)), digits_)});
        return out;
    }

    Money total(Money adjustment) const {
        Money sum = net(adjustment);
        for (const TaxLine& tax : taxes(adjustment))
            sum = sum + tax.amount;
        return sum;
    }

private:
    const Price& lines_;
    const Shop& shop_;
    int digits_;
};

/// The largest adjustment whose total does not pass `wanted`. A unit more always raises the total
/// by a unit at least, so it lies no farther from `start` than the totals lie apart.
Money adjustment_for(const Sum& sum, Money wanted, Money start, std::int64_t unit) {
    const std::int64_t apart = (wanted - sum.total(start)).micros() / unit;
    std::int64_t low = std::min<std::int64_t>(apart, 0) - 1;
    std::int64_t high = std::max<std::int64_t>(apart, 0) + 1;
    const auto at = [&](std::int64_t units) { return start + Money::from_micros(units * unit); };
    while (high - low > 1) {
        const std::int64_t middle = low + (high - low) / 2;
        (sum.total(at(middle)) <= wanted ? low : high) = middle;
    }
    return at(low);
}

/// What the customer's price is rounded to; never nothing.
Money rounded_price(Money total, Money step) {
    const Money rounded = rounded_to(total, step.micros());
    return rounded == Money{} && total > Money{} ? step : rounded;
}

void set_sums(Price& price, const Sum& sum) {
    price.net = sum.net(price.adjustment);
    price.taxes = sum.taxes(price.adjustment);
    price.tax = Money{};
    for (const TaxLine& tax : price.taxes)
        price.tax = price.tax + tax.amount;
    price.total = *price.net + price.tax;
}

/// Works the net price back from the rounded total. Where no net price gives that total to the
/// minor unit (a tax of 19 % steps over some), the first tax takes the odd units.
void round_total(Price& price, const Sum& sum, Money step, std::int64_t unit) {
    const Money wanted = rounded_price(*price.total, step);
    price.adjustment = adjustment_for(sum, wanted, price.adjustment, unit);
    set_sums(price, sum);
    const Money odd = wanted - *price.total;
    if (odd == Money{})
        return;
    price.taxes.front().amount = price.taxes.front().amount + odd;
    price.tax = price.tax + odd;
    price.total = wanted;
}

} // namespace

Money to_minor_unit(Money amount, int digits) {
    return rounded_to(amount, minor_unit(digits));
}

Price price_of(const Costs& costs, const Shop& shop, const std::string& currency, int digits) {
    const auto marked_up = [&](const std::optional<Money>& cost, Share mark_up) {
        return cost ? std::optional(to_minor_unit(*cost + mark_up.of(*cost), digits))
                    : std::nullopt;
    };
    Price price;
    price.currency = currency;
    price.digits = digits;
    price.film = marked_up(costs.film, shop.film_mark_up);
    price.consumables = marked_up(costs.consumables, shop.consumables_mark_up);
    if (shop.rate)
        price.labor = to_minor_unit(of_hours(*shop.rate, costs.minutes), digits);
    if (!price.film && !price.labor)
        return price;
    const Sum sum(price, shop, digits);
    if (const Money least = to_minor_unit(shop.minimum.value_or(Money{}), digits);
        sum.net(Money{}) < least)
        price.adjustment = least - sum.net(Money{});
    set_sums(price, sum);
    if (shop.round_to)
        round_total(
            price, sum,
            std::max(to_minor_unit(*shop.round_to, digits), Money::from_micros(minor_unit(digits))),
            minor_unit(digits));
    return price;
}

} // namespace pelt::order
