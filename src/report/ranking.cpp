// SPDX-License-Identifier: MIT
#include "report/ranking.hpp"

#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/numbers.hpp"

#include <algorithm>
#include <set>
#include <tuple>

namespace pelt::report {

std::optional<Money> price_of(const ComparisonRow& row) {
    return row.order() != nullptr && !row.priced_width ? row.order()->total : std::nullopt;
}

namespace {

/// The place of the row's currency among those of the comparison.
std::size_t currency_of(const Comparison& comparison, const ComparisonRow& row) {
    const auto same =
        std::find_if(comparison.rows.begin(), comparison.rows.end(), [&](const ComparisonRow& r) {
            return price_of(r) && r.order()->currency == row.order()->currency;
        });
    return static_cast<std::size_t>(same - comparison.rows.begin());
}

Ranked rank_of(const Comparison& comparison, const ComparisonRow& row) {
    Ranked out;
    out.row = &row;
    const std::optional<Money> price = price_of(row);
    if (!price)
        return out;
    out.rank = 1;
    for (const ComparisonRow& other : comparison.rows) {
        const std::optional<Money> others = price_of(other);
        if (!others || currency_of(comparison, other) != currency_of(comparison, row))
            continue;
        *out.rank += *others < *price ? 1 : 0;
        if (out.cheapest == nullptr || *others < *price_of(*out.cheapest))
            out.cheapest = &other;
    }
    out.more = *price - *price_of(*out.cheapest);
    return out;
}

/// Rounded to what is paid: a half goes away from zero.
Money rounded(Int128 micros, int digits) {
    std::int64_t step = Money::per_unit;
    for (int i = 0; i < digits && step > 1; ++i)
        step /= 10;
    return Money::from_micros(static_cast<std::int64_t>(divided_nearest(micros, step)) * step);
}

/// "12.00 EUR for", "5.00 EUR saved by"
std::string part(Money amount, const ComparisonRow& row, const std::string& what) {
    const int digits = row.job()->film.money_digits;
    const bool saved = amount < Money{};
    return money(saved ? Money{} - amount : amount, digits, row.order()->currency) +
           (saved ? " saved by " : " for ") + what;
}

std::string seams_text(const ComparisonRow& row, const ComparisonRow& than) {
    const auto seams = static_cast<std::int64_t>(row.job()->seams.size());
    const auto others = static_cast<std::int64_t>(than.job()->seams.size());
    if (seams == others)
        return "";
    return "; " + counted(seams > others ? seams - others : others - seams, "seam", "seams") +
           (seams > others ? " more" : " fewer");
}

std::string difference(const Ranked& ranked, const Measures& measures) {
    const ComparisonRow& row = *ranked.row;
    const ComparisonRow& than = *ranked.cheapest;
    const Length length = row.order()->length();
    const Length least = than.order()->length();
    const int digits = row.job()->film.money_digits;
    std::string text = ranked.row->film + ", " + measures.size_with_unit(ranked.row->width) + ": " +
                       money(*ranked.more, digits, row.order()->currency) + " more";
    if (least > Length{} && length != least) {
        const Money by_length = rounded(
            Int128{than.order()->total->micros()} * (length.pm() - least.pm()) / least.pm(), digits);
        const bool longer = length > least;
        const std::string film = measures.film(longer ? length - least : least - length) +
                                 (longer ? " more" : " less") + " film to order";
        const Money by_price = *ranked.more - by_length;
        text += by_price == Money{} ? ", all for " + film
                                    : ": " + part(by_length, row, film) + ", " +
                                          part(by_price, row, "the price of a meter");
    } else {
        text += ", all because a meter of it costs more";
    }
    return text + seams_text(row, than) + ".";
}

bool has_several_currencies(const Comparison& comparison) {
    std::set<std::string> currencies;
    for (const ComparisonRow& row : comparison.rows)
        if (price_of(row))
            currencies.insert(row.order()->currency);
    return currencies.size() > 1;
}

} // namespace

const Job* ComparisonRow::job() const {
    return sheet ? &sheet->plan.job() : estimate ? estimate->as_scaled.get() : nullptr;
}

const Order* ComparisonRow::order() const {
    return sheet ? &sheet->order : estimate ? &estimate->order : nullptr;
}

std::vector<std::string> about_the_prices(const Comparison& comparison) {
    const Measures measures(comparison.unit);
    std::vector<std::string> out;
    if (has_several_currencies(comparison))
        out.push_back("The prices are in several currencies: those of each are ranked by "
                      "themselves, and not compared with the others.");
    for (const ComparisonRow& row : comparison.rows)
        if (row.order() != nullptr && row.order()->total && row.priced_width)
            out.push_back(row.film + ", " + measures.size_with_unit(row.width) +
                          ": no price, since the film's file has only that of its roll " +
                          measures.size_with_unit(*row.priced_width) +
                          " wide; ask for that of this width.");
    return out;
}

std::vector<Ranked> ranks(const Comparison& comparison) {
    std::vector<Ranked> out;
    for (const ComparisonRow& row : comparison.rows)
        out.push_back(rank_of(comparison, row));
    return out;
}

std::vector<Ranked> ranked(const Comparison& comparison) {
    std::vector<Ranked> out = ranks(comparison);
    const auto place = [&](const Ranked& r) {
        const int known = r.rank ? 0 : (r.row->job() != nullptr ? 1 : 2);
        return std::tuple(known, known == 0 ? currency_of(comparison, *r.row) : 0,
                          r.rank.value_or(0));
    };
    std::stable_sort(out.begin(), out.end(),
                     [&](const Ranked& a, const Ranked& b) { return place(a) < place(b); });
    return out;
}

std::vector<std::string> differences(const Comparison& comparison) {
    const Measures measures(comparison.unit);
    std::vector<std::string> out;
    for (const Ranked& r : ranked(comparison))
        if (r.more && *r.more > Money{})
            out.push_back(difference(r, measures));
    return out;
}

} // namespace pelt::report
