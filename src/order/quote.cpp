// SPDX-License-Identifier: MIT
// A planned job as a quote: hours, days, consumables, price.
#include "order/buying.hpp"
#include "order/consumables.hpp"
#include "order/days.hpp"
#include "order/order.hpp"
#include "order/price.hpp"
#include "order/purchase.hpp"
#include "order/work.hpp"

#include <algorithm>
#include <utility>

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

std::optional<Money> film_cost(const FilmToQuote& film, FilmBy by) {
    if (by == FilmBy::metre)
        return by_the_metre(film.job->film, film.taken);
    if (film.order.lines.empty() && !film.range)
        return Money{}; // all of it comes from the shelf
    return film.order.total;
}

/// Of all films together; none where one has no price.
std::optional<Money> films_cost(const std::vector<FilmToQuote>& films, FilmBy by) {
    std::optional<Money> sum = Money{};
    for (const FilmToQuote& film : films) {
        const auto cost = film_cost(film, by);
        sum = sum && cost ? std::optional(*sum + *cost) : std::nullopt;
    }
    return sum;
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

/// What the log changed, by panels; each once.
void say_what_was_learnt(Quote& quote, const std::vector<FilmToQuote>& films) {
    for (const FilmToQuote& film : films) {
        const Job& job = *film.job;
        if (job.learnt && job.learnt->pace.panels > 0)
            quote.pace_by_log = job.learnt->pace;
        if (!film.order.spare)
            continue;
        for (const RedoChance& chance : film.order.spare->redo)
            if (chance.by_log)
                quote.redo_by_log.push_back({job.vehicles[static_cast<std::size_t>(chance.vehicle)]
                                                 .panels[static_cast<std::size_t>(chance.panel)]
                                                 .name,
                                             chance.percent, *chance.by_log});
    }
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

/// What films and hours cost in the shop's money.
class Pricing {
public:
    Pricing(const Film& film, const Shop& shop)
        : shop_(shop), currency_(shop.currency.empty() ? film.currency : shop.currency),
          digits_(film.money_digits) {}

    Price of(const Costs& costs) const { return price_of(costs, shop_, currency_, digits_); }
    const Shop& shop() const { return shop_; }

private:
    const Shop& shop_;
    std::string currency_;
    int digits_;
};

/// Of all films together, those that are planned as they are. Lengths of several estimates are
/// added up, though they hardly all come out long: the range is rather too wide than too narrow.
std::optional<Length> sum_of(const std::vector<FilmToQuote>& films,
                             std::optional<Um> LengthRange::*end) {
    Length sum;
    for (const FilmToQuote& film : films) {
        if (film.range && !((*film.range).*end))
            return std::nullopt;
        sum = sum + (film.range ? Length::from_um(*((*film.range).*end)) : film.taken);
    }
    return sum;
}

/// To pay where every estimated film takes so much, and the work so long.
std::optional<Money> total_with(std::vector<FilmToQuote> films, std::optional<Um> LengthRange::*end,
                                double minutes, const Quote& quote, const Pricing& pricing) {
    for (FilmToQuote& film : films) {
        if (!film.range)
            continue;
        const auto length = (*film.range).*end;
        if (!length)
            return std::nullopt;
        film.taken = Length::from_um(*length);
        film.order = buy(film.job->film, lengths_for(film.job->film, *length), {});
    }
    const Costs costs{films_cost(films, pricing.shop().film_by), cost_of(quote.consumables),
                      minutes};
    return pricing.of(costs).total;
}

std::optional<QuoteRange> range_of(const std::vector<FilmToQuote>& films, const Quote& quote,
                                   const Pricing& pricing) {
    if (std::none_of(films.begin(), films.end(),
                     [](const FilmToQuote& film) { return film.range.has_value(); }))
        return std::nullopt;
    return QuoteRange{
        sum_of(films, &LengthRange::low),
        sum_of(films, &LengthRange::middle),
        sum_of(films, &LengthRange::high),
        total_with(films, &LengthRange::low, quote.hours.low, quote, pricing),
        total_with(films, &LengthRange::high, quote.hours.high, quote, pricing)};
}

} // namespace

FilmToQuote film_to_quote(const Outcome& planned) {
    const Plan& plan = *planned.plan;
    const Um spare = planned.order.spare ? planned.order.spare->needed : 0;
    return {plan.shared_job(), Length::from_um(length_of(plan.layout()) + spare), planned.order};
}

FilmToQuote film_to_quote(const Estimate& estimate) {
    return {estimate.as_scaled,
            Length::from_um(estimate.sure_length.value_or(estimate.as_scaled_length)),
            estimate.order, estimate.length};
}

Quote quote(const std::vector<FilmToQuote>& films, const Shop& shop, const QuoteWishes& wishes) {
    const OldFilm old_film{wishes.old_film_everywhere, wishes.old_film};
    const std::vector<LeftOut> left_out = left_out_of_all(films);
    JobWork work = work_of(*films.front().job, shop, old_film, &left_out);
    std::int64_t rest = 0;
    for (std::size_t i = 0; i < films.size(); ++i) {
        const Job& job = *films[i].job;
        rest = std::max(rest, shop.rest_minutes.value_or(trade::rest_of(job.film.kind)));
        if (i > 0)
            work = together(std::move(work), work_of(job, shop, old_film, nullptr));
    }
    Quote out;
    set_hours(out, work);
    out.consumables = consumables_of(work.drivers, shop);
    out.days = days_of(work, shop, {wishes.start, wishes.film_arrives, rest});
    const Costs costs{films_cost(films, shop.film_by), cost_of(out.consumables), out.hours.taken};
    const Pricing pricing(films.front().job->film, shop);
    out.price = pricing.of(costs);
    out.range = range_of(films, out, pricing);
    say_what_was_learnt(out, films);
    say_what_is_left_out(out, shop, work);
    return out;
}

} // namespace pelt::order
