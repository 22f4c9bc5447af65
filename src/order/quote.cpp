// SPDX-License-Identifier: MIT
// A planned job as a quote: hours, days, consumables, price.
#include "order/consumables.hpp"
#include "order/days.hpp"
#include "order/order.hpp"
#include "order/price.hpp"
#include "order/work.hpp"

#include <algorithm>

namespace pelt::order {
namespace {

/// The price of a length by the smallest length that is sold: what a metre costs.
std::optional<Money> by_the_metre(const Film& film, Length length) {
    if (film.sold.empty())
        return std::nullopt;
    const Offer& offer =
        *std::min_element(film.sold.begin(), film.sold.end(),
                          [](const Offer& a, const Offer& b) { return a.by < b.by; });
    const Int128 product = Int128{offer.price.micros()} * length.pm();
    return Money::from_micros(
        static_cast<std::int64_t>((product + offer.by.pm() / 2) / offer.by.pm()));
}

/// What the job takes off all rolls, and its spare.
Length film_taken(const Outcome& planned) {
    Um length = planned.order.spare ? planned.order.spare->needed : 0;
    for (const UsedRoll& used : planned.plan->layout().rolls)
        length += used.length;
    return Length::from_um(length);
}

std::optional<Money> film_cost(const Outcome& planned, FilmBy by) {
    if (by == FilmBy::metre)
        return by_the_metre(planned.plan->job().film, film_taken(planned));
    if (planned.order.lines.empty())
        return Money{}; // all of it comes from the shelf
    return planned.order.total;
}

void set_hours(Quote& quote, const JobWork& work) {
    Minutes all;
    for (std::size_t i = 0; i < work.stages.size(); ++i) {
        all = all + work.stages[i];
        if (work.stages[i].high > 0)
            quote.stages.push_back({static_cast<Stage>(i), work.stages[i]});
    }
    quote.hours = all;
    for (const PanelWork& panel : work.panels)
        quote.panels.push_back({panel.label, panel.time, panel.from});
}

std::optional<Money> cost_of(const std::vector<ConsumableNeed>& needs) {
    std::optional<Money> sum;
    for (const ConsumableNeed& need : needs)
        if (need.cost)
            sum = sum.value_or(Money{}) + *need.cost;
    return sum;
}

std::string names_without_price(const std::vector<ConsumableNeed>& needs) {
    std::string names;
    for (const ConsumableNeed& need : needs)
        if (!need.cost)
            names += (names.empty() ? "" : ", ") + need.name;
    return names;
}

void say_what_is_left_out(Quote& quote, const Shop& shop, const JobWork& work) {
    if (!quote.price.film)
        quote.left_out.push_back("Film is not in the price: the film file does not say how it is "
                                 "sold.");
    if (!shop.rate)
        quote.left_out.push_back("Labor is not in the price: the shop file has no 'rate'.");
    if (const std::string names = names_without_price(quote.consumables); !names.empty())
        quote.left_out.push_back(
            shop.prices.empty()
                ? "Consumables are not in the price: the shop file has no 'prices'."
                : "Not in the price, for want of one in the shop file: " + names + ".");
    if (shop.taxes.empty())
        quote.left_out.push_back("No tax is added: the shop file names none.");
    if (work.without_part_minutes)
        quote.left_out.push_back("Parts to take off without 'minutes' in the vehicle file take no "
                                 "time here.");
}

} // namespace

Quote quote(const std::vector<Outcome>& films, const Shop& shop, const QuoteWishes& wishes) {
    const OldFilm old_film{wishes.old_film_everywhere, wishes.old_film};
    const std::vector<LeftOut> left_out = left_out_of_all(films);
    JobWork work = work_of(films.front().plan->job(), shop, old_film, &left_out);
    Costs costs;
    costs.film = film_cost(films.front(), shop.film_by);
    std::int64_t rest = 0;
    for (std::size_t i = 0; i < films.size(); ++i) {
        const Job& job = films[i].plan->job();
        rest = std::max(rest, shop.rest_minutes.value_or(trade::rest_of(job.film.kind)));
        if (i == 0)
            continue;
        work = together(std::move(work), work_of(job, shop, old_film, nullptr));
        const auto more = film_cost(films[i], shop.film_by);
        costs.film = costs.film && more ? std::optional(*costs.film + *more) : std::nullopt;
    }
    Quote out;
    set_hours(out, work);
    out.consumables = consumables_of(work.drivers, shop);
    costs.consumables = cost_of(out.consumables);
    costs.minutes = out.hours.taken;
    out.days = days_of(work, shop, {wishes.start, wishes.film_arrives, rest});
    const Film& film = films.front().plan->job().film;
    out.price = price_of(costs, shop, shop.currency.empty() ? film.currency : shop.currency,
                         film.money_digits);
    say_what_is_left_out(out, shop, work);
    return out;
}

} // namespace pelt::order
