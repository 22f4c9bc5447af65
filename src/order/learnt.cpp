// SPDX-License-Identifier: MIT
// What a shop's log teaches.
//
// A chance of redo: what is usual counts like 20 panels, to which those of the log are added (a
// Beta distribution of mean m and weight 20, updated by successes and failures; Gelman et al.,
// Bayesian Data Analysis, chapter 2, from memory). A pace: the geometric mean of minutes taken over
// minutes reckoned, a panel each, where the shop file's pace counts like 10 panels.
#include "order/order.hpp"
#include "trade/labor.hpp"
#include "trade/names.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::order {
namespace {

constexpr double panels_of_the_usual_chance = 20;
constexpr double panels_of_the_usual_pace = 10;

/// What one panel of a kind takes in this shop in this film; none: no table knows it by name.
std::optional<double> reckoned(const LogRow& row, const Shop& shop) {
    if (!row.is)
        return std::nullopt;
    const double factor = trade::factor_of(row.film, !trade::is_flat(*row.is));
    if (const auto own = shop.minutes.find(*row.is); own != shop.minutes.end())
        return factor * static_cast<double>(own->second);
    const auto known = trade::time_on(*row.is);
    return known ? std::optional(factor * known->taken) : std::nullopt;
}

/// Sums of logarithms, of which the first counts so much.
class GeometricMean {
public:
    GeometricMean(double first, double weight) : sum_(weight * std::log(first)), weight_(weight) {}
    void add(double value, double weight) {
        sum_ += weight * std::log(value);
        weight_ += weight;
    }
    double mean() const { return weight_ > 0 ? std::exp(sum_ / weight_) : 1; }

private:
    double sum_;
    double weight_;
};

PaceLearnt pace_of(const std::vector<const LogRow*>& rows, const Shop& shop) {
    GeometricMean mean(shop.pace, panels_of_the_usual_pace);
    PaceLearnt out;
    for (const LogRow* row : rows) {
        const std::optional<double> each = reckoned(*row, shop);
        const std::int64_t laid = row->stayed + row->spoiled;
        if (!each || !row->minutes || laid == 0)
            continue;
        const auto panels = static_cast<double>(laid);
        mean.add(*row->minutes / (panels * *each), panels);
        out.panels += laid;
    }
    out.pace = out.panels > 0 ? mean.mean() : shop.pace;
    return out;
}

GuessesLearnt guesses_of(const Log& log) {
    GuessesLearnt out;
    GeometricMean mean(1, 0);
    for (const GuessRow& guess : log.guesses) {
        ++out.all;
        if (guess.low < guess.high) {
            ++out.ranges;
            out.within += guess.low <= guess.measured && guess.measured <= guess.high ? 1 : 0;
        }
        mean.add(2.0 * static_cast<double>(guess.measured) /
                     static_cast<double>(guess.low + guess.high),
                 1);
    }
    out.ratio = mean.mean();
    return out;
}

} // namespace

double updated_percent(double usual_percent, const Tried& tried) {
    constexpr double hundred = 100;
    return hundred *
           (panels_of_the_usual_chance * usual_percent / hundred +
            static_cast<double>(tried.spoiled)) /
           (panels_of_the_usual_chance + static_cast<double>(tried.laid()));
}

std::shared_ptr<const Learnt> learnt_from(const Shop& shop, const std::vector<std::string>& who) {
    if (!shop.log)
        return nullptr;
    Learnt out;
    out.log = shop.log->source;
    for (const std::string& name : who)
        out.who += (out.who.empty() ? "" : ", ") + name;
    std::vector<const LogRow*> rows;
    for (const LogRow& row : shop.log->rows) {
        if (!who.empty() && std::find(who.begin(), who.end(), row.who) == who.end())
            continue;
        rows.push_back(&row);
        if (!row.is) {
            ++out.not_known[row.panel];
            continue;
        }
        Tried& tried = out.redo[{*row.is, row.film}];
        tried.stayed += row.stayed;
        tried.spoiled += row.spoiled;
    }
    out.rows = static_cast<std::int64_t>(rows.size());
    out.pace = pace_of(rows, shop);
    out.guesses = guesses_of(*shop.log);
    return std::make_shared<const Learnt>(std::move(out));
}

} // namespace pelt::order
