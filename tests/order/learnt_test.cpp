// SPDX-License-Identifier: MIT
// What a shop's log teaches, against closed forms.
#include "order/order.hpp"
#include "trade/labor.hpp"

#include <doctest/doctest.h>

#include <cmath>

using pelt::FilmKind;
using pelt::Learnt;
using pelt::Log;
using pelt::LogRow;
using pelt::PanelKind;
using pelt::Shop;
using pelt::Tried;
using pelt::order::learnt_from;
using pelt::order::updated_percent;

namespace {

LogRow row(PanelKind is, std::int64_t stayed, std::int64_t spoiled, double minutes,
           const std::string& who = "") {
    LogRow out;
    out.is = is;
    out.film = FilmKind::cast;
    out.stayed = stayed;
    out.spoiled = spoiled;
    if (minutes > 0)
        out.minutes = minutes;
    out.who = who;
    return out;
}

Shop shop_with(std::vector<LogRow> rows) {
    Log log;
    log.source = std::make_shared<const pelt::Source>();
    log.rows = std::move(rows);
    Shop shop;
    shop.log = std::make_shared<const Log>(std::move(log));
    return shop;
}

/// The mean of a Beta distribution is a / (a + b): by numbers alone, over a fine grid.
double mean_of_beta(double a, double b) {
    double weight = 0;
    double sum = 0;
    constexpr int steps = 2'000'000;
    for (int i = 0; i < steps; ++i) {
        const double x = (i + .5) / steps;
        const double density = std::exp((a - 1) * std::log(x) + (b - 1) * std::log(1 - x));
        weight += density;
        sum += density * x;
    }
    return sum / weight;
}

} // namespace

TEST_CASE("a chance is the mean of a Beta distribution, updated by what stayed and what did not") {
    // 20 panels at 15 %: Beta(3, 17). 41 were laid, 3 of them spoiled: Beta(6, 55).
    CHECK(std::abs(updated_percent(15, {38, 3}) - 100 * 6.0 / 61) < 1e-12);
    CHECK(std::abs(updated_percent(15, {38, 3}) - 100 * mean_of_beta(6, 55)) < 1e-6);
    CHECK(std::abs(updated_percent(15, {0, 7}) - 100 * mean_of_beta(10, 17)) < 1e-6);
    CHECK(updated_percent(4, {0, 0}) == 4);
    // Of very many the log alone decides.
    CHECK(std::abs(updated_percent(40, {990'000, 10'000}) - 1) < .001);
}

TEST_CASE("a chance never leaves 0 to 100 and lies between what is usual and what was seen") {
    for (const double usual : {0.0, 3.0, 40.0, 95.0})
        for (std::int64_t stayed = 0; stayed < 50; stayed += 7)
            for (std::int64_t spoiled = 0; spoiled < 50; spoiled += 7) {
                if (stayed + spoiled == 0)
                    continue;
                const double seen =
                    100.0 * static_cast<double>(spoiled) / static_cast<double>(stayed + spoiled);
                const double made = updated_percent(usual, {stayed, spoiled});
                CHECK(made >= std::min(usual, seen) - 1e-12);
                CHECK(made <= std::max(usual, seen) + 1e-12);
            }
}

TEST_CASE("the pace is a geometric mean, a panel each, shrunk by the weight of 10 panels") {
    // A hood is reckoned at 60 minutes in cast film (50 to 90, a quarter up). Ten hoods at half of
    // that, and ten panels of the usual pace: the root of a half.
    const auto learnt = learnt_from(shop_with({row(PanelKind::hood, 10, 0, 300)}), {});
    CHECK(learnt->pace.panels == 10);
    CHECK(std::abs(learnt->pace.pace - std::sqrt(.5)) < 1e-12);
    // One as much too slow as one is too fast: the usual pace.
    const auto even = learnt_from(
        shop_with({row(PanelKind::hood, 1, 0, 120), row(PanelKind::hood, 1, 0, 30)}), {});
    CHECK(std::abs(even->pace.pace - 1) < 1e-12);
    // The shop file's pace is what the ten panels have.
    Shop slow = shop_with({row(PanelKind::hood, 10, 0, 600)});
    slow.pace = 4;
    CHECK(std::abs(learnt_from(slow, {})->pace.pace - 2) < 1e-12);
}

TEST_CASE("what was not timed, or is not known by name, says nothing of the pace") {
    LogRow unknown = row(PanelKind::hood, 5, 0, 10);
    unknown.is.reset();
    unknown.panel = "winglet";
    const auto learnt = learnt_from(
        shop_with({row(PanelKind::hood, 3, 1, 0), unknown, row(PanelKind::trim, 2, 0, 5)}), {});
    CHECK(learnt->pace.panels == 0);
    CHECK(learnt->pace.pace == 1);
    CHECK(learnt->redo.at({PanelKind::hood, FilmKind::cast}).spoiled == 1);
    CHECK(learnt->not_known.at("winglet") == 1);
}

TEST_CASE("rows of some people alone") {
    const Shop shop =
        shop_with({row(PanelKind::roof, 8, 2, 0, "Ada"), row(PanelKind::roof, 9, 0, 0, "Ben"),
                   row(PanelKind::roof, 1, 1, 0, "Cy")});
    const auto tried = [&](const std::vector<std::string>& who) {
        return learnt_from(shop, who)->redo.at({PanelKind::roof, FilmKind::cast});
    };
    CHECK(tried({}).laid() == 21);
    CHECK(tried({"Ada"}).laid() == 10);
    CHECK(tried({"Ada", "Cy"}).spoiled == 3);
    CHECK_FALSE(learnt_from(Shop{}, {}));
}

TEST_CASE("guesses: how many lay within their range, and the geometric mean of what they came to") {
    Log log;
    log.source = std::make_shared<const pelt::Source>();
    log.guesses = {{"a", 10'000'000, 14'000'000, 24'000'000}, // twice its middle
                   {"b", 10'000'000, 14'000'000, 12'000'000},
                   {"c", 8'000'000, 8'000'000, 4'000'000}}; // half of it
    Shop shop;
    shop.log = std::make_shared<const Log>(log);
    const auto guesses = learnt_from(shop, {})->guesses;
    CHECK(guesses.all == 3);
    CHECK(guesses.ranges == 2);
    CHECK(guesses.within == 1);
    CHECK(std::abs(guesses.ratio - 1) < 1e-12);
}
