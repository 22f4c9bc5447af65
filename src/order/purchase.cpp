// SPDX-License-Identifier: MIT
#include "order/purchase.hpp"

#include "order/rolls_of_lines.hpp"

#include <algorithm>
#include <utility>

namespace pelt::order {
namespace {

/// Of offers in smaller steps than this part of the spare only so many steps are looked at.
constexpr std::int64_t most_steps = 400;

std::int64_t rounded_up(Length length, Length by) {
    return (length.pm() + by.pm() - 1) / by.pm();
}

/// The fewest of an offer that are sold and hold `need` in one length.
std::int64_t fewest(const Offer& offer, Length need) {
    const std::int64_t least = offer.from ? rounded_up(*offer.from, offer.by) : 1;
    return std::max({std::int64_t{1}, least, rounded_up(need, offer.by)});
}

/// The most of an offer that are sold on one roll; none: any number.
std::optional<std::int64_t> most_of(const Film& film, const Offer& offer) {
    std::optional<Length> longest = offer.up_to;
    if (film.roll_length)
        longest = std::min(longest.value_or(Length::from_um(*film.roll_length)),
                           Length::from_um(*film.roll_length));
    return longest ? std::optional(longest->pm() / offer.by.pm()) : std::nullopt;
}

Money cost_of(const OrderLine& line) {
    return line.count * *line.price;
}

bool better(const OrderLine& a, const OrderLine& b) {
    return cost_of(a) != cost_of(b) ? cost_of(a) < cost_of(b) : a.length() > b.length();
}

/// Dearer ones only where they are longer; by rising cost.
std::vector<OrderLine> without_dominated(std::vector<OrderLine> lines) {
    std::stable_sort(lines.begin(), lines.end(), better);
    std::vector<OrderLine> kept;
    for (OrderLine& line : lines)
        if (kept.empty() || line.length() > kept.back().length())
            kept.push_back(std::move(line));
    return kept;
}

Length sum_of(const std::vector<Um>& lengths) {
    Um sum = 0;
    for (const Um length : lengths)
        sum += length;
    return Length::from_um(sum);
}

std::vector<std::vector<OrderLine>> choices_for(const Film& film, const std::vector<Um>& lengths,
                                                Um spare) {
    std::vector<std::vector<OrderLine>> choices;
    for (const Um length : lengths)
        choices.push_back(lines_for(film, length, length + spare));
    return choices;
}

/// For rolls of spare alone.
std::vector<OrderLine> extra_lines(const Film& film, const SpareToBuy& spare) {
    return spare.length > 0 ? lines_for(film, spare.in_one, std::max(spare.length, spare.in_one))
                            : std::vector<OrderLine>{};
}

bool every_line_is_looked_at(const Film& film, Um spare) {
    return std::all_of(film.sold.begin(), film.sold.end(), [&](const Offer& offer) {
        return Length::from_um(spare).pm() / offer.by.pm() < most_steps;
    });
}

/// Without prices: what is needed, the spare on the last roll that takes it, or on rolls of its
/// own.
Purchase exact_order(const Film& film, std::vector<Um> lengths, const SpareToBuy& spare) {
    Um more = spare.length;
    const auto takes_it = [&](Um length) {
        return !film.roll_length || length + more <= *film.roll_length;
    };
    std::vector<Um> for_spare;
    while (more > 0 && std::none_of(lengths.begin(), lengths.end(), takes_it) &&
           more > *film.roll_length) {
        for_spare.push_back(*film.roll_length);
        more -= *film.roll_length;
    }
    const auto last = std::find_if(lengths.rbegin(), lengths.rend(), takes_it);
    if (more > 0 && last == lengths.rend())
        for_spare.push_back(std::max(more, std::min(spare.in_one, *film.roll_length)));
    else if (more > 0)
        *last += more;
    lengths.insert(lengths.end(), for_spare.begin(), for_spare.end());
    Purchase purchase;
    for (const Um length : lengths)
        purchase.lines.push_back({Length::from_um(length), 1, std::nullopt, ""});
    return purchase;
}

} // namespace

Length Purchase::length() const {
    Length sum;
    for (const OrderLine& line : lines)
        sum = sum + line.length();
    return sum;
}

std::optional<Um> longest_purchase(const Film& film) {
    if (film.sold.empty())
        return film.roll_length;
    Length longest;
    for (const Offer& offer : film.sold) {
        const std::optional<std::int64_t> most = most_of(film, offer);
        if (!most)
            return std::nullopt;
        if (*most >= fewest(offer, {}))
            longest = std::max(longest, *most * offer.by);
    }
    return longest.floor_um();
}

std::vector<Um> lengths_for(const Film& film, Um length) {
    std::vector<Um> out;
    const std::optional<Um> longest = longest_purchase(film);
    while (longest && *longest > 0 && length > *longest) {
        out.push_back(*longest);
        length -= *longest;
    }
    out.push_back(length);
    return out;
}

std::vector<OrderLine> lines_for(const Film& film, Um need, Um most) {
    std::vector<OrderLine> lines;
    for (const Offer& offer : film.sold) {
        const std::int64_t first = fewest(offer, Length::from_um(need));
        const std::int64_t enough = std::max(first, fewest(offer, Length::from_um(most)));
        const std::int64_t last = std::min(enough, most_of(film, offer).value_or(enough));
        const std::int64_t step = std::max<std::int64_t>(1, (last - first) / most_steps);
        for (std::int64_t count = first; count < last; count += step)
            lines.push_back({offer.by, count, offer.price, ""});
        if (last >= first)
            lines.push_back({offer.by, last, offer.price, ""});
    }
    return without_dominated(std::move(lines));
}

std::optional<OrderLine> cheapest_purchase(const Film& film, Um need) {
    if (film.sold.empty())
        return OrderLine{Length::from_um(need), 1, std::nullopt, ""};
    const std::vector<OrderLine> lines = lines_for(film, need, need);
    return lines.empty() ? std::nullopt : std::optional(lines.front());
}

std::optional<Purchase> cheapest_order(const Film& film, const std::vector<Um>& lengths,
                                       const SpareToBuy& spare) {
    if (lengths.empty())
        return Purchase{{}, Money{}}; // all of it comes from stock, and nothing is bought for spare
    if (film.sold.empty())
        return exact_order(film, lengths, spare);
    std::optional<Purchase> best =
        cheapest_of(choices_for(film, lengths, spare.length), extra_lines(film, spare),
                    sum_of(lengths) + Length::from_um(spare.length));
    if (best)
        best->cheapest = best->cheapest && every_line_is_looked_at(film, spare.length);
    return best;
}

std::optional<Money> least_cost(const Film& film, Um length) {
    if (film.sold.empty() || !every_line_is_looked_at(film, length))
        return std::nullopt;
    const std::optional<Purchase> least =
        cheapest_of({}, lines_for(film, 1, length), Length::from_um(length));
    return least && least->cheapest ? least->cost : std::nullopt;
}

namespace {

/// What is sold otherwise than these lines.
Film without_offers_of(Film film, const std::vector<OrderLine>& lines) {
    std::erase_if(film.sold, [&](const Offer& offer) {
        return std::any_of(lines.begin(), lines.end(), [&](const OrderLine& line) {
            return offer.by == line.by && offer.price == *line.price;
        });
    });
    return film;
}

/// In whatever order: a roll may hold the pieces or be for spare.
bool same_lines(const Purchase& a, const Purchase& b) {
    const auto same = [](const OrderLine& x, const OrderLine& y) {
        return x.by == y.by && x.count == y.count && x.price == y.price;
    };
    return std::is_permutation(a.lines.begin(), a.lines.end(), b.lines.begin(), b.lines.end(),
                               same);
}

} // namespace

std::optional<Purchase> next_best_order(const Film& film, const std::vector<Um>& lengths,
                                        const SpareToBuy& spare, const Purchase& best) {
    if (!best.cost || lengths.empty())
        return std::nullopt;
    const Length least = sum_of(lengths) + Length::from_um(spare.length);
    const std::vector<OrderLine> extra = extra_lines(film, spare);
    std::optional<Purchase> next;
    const auto consider = [&](std::optional<Purchase> found) {
        if (found && !same_lines(*found, best) && (!next || *found->cost < *next->cost))
            next = std::move(found);
    };
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        std::vector<std::vector<OrderLine>> choices = choices_for(film, lengths, spare.length);
        choices[i] = lines_for(without_offers_of(film, {best.lines[i]}), lengths[i],
                               lengths[i] + spare.length);
        consider(cheapest_of(choices, extra, least));
    }
    if (spare.length > 0) {
        std::vector<std::vector<OrderLine>> choices = choices_for(film, lengths, spare.length);
        choices.push_back(extra_lines(without_offers_of(film, best.lines), spare));
        consider(cheapest_of(choices, extra, least));
    }
    return next;
}

} // namespace pelt::order
