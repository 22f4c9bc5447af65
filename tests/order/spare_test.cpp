// SPDX-License-Identifier: MIT
// Spare film: the distribution of what is spoilt, against closed forms, published tables and plain
// enumeration; the assumed chances; what a job buys.
#include "job.hpp"
#include "order/redo.hpp"
#include "order/spare.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace pelt::order_test {
namespace {

using order::Remakes;

constexpr Um step = 1'000;

/// C(n + j − 1, j) r^j (1 − r)^n summed to j = most: n alike pieces are spoilt `most` times at
/// most.
double negative_binomial(int n, double r, int most) {
    double term = 1;
    for (int i = 0; i < n; ++i)
        term *= 1 - r;
    double sum = term;
    for (int j = 1; j <= most; ++j) {
        term *= r * (n + j - 1) / j;
        sum += term;
    }
    return sum;
}

TEST_CASE("alike pieces: the exact negative-binomial sums") {
    for (const int n : {1, 2, 5, 12, 40})
        for (const double r : {0.03, 0.1, 0.25, 0.9}) {
            const std::vector<Remakes> alike{{7 * step, r, static_cast<std::size_t>(n)}};
            for (const int most : {0, 1, 2, 3, 8, 30}) {
                CAPTURE(n);
                CAPTURE(r);
                CAPTURE(most);
                const double exact = negative_binomial(n, r, most);
                CHECK(std::abs(order::enough_with(alike, step, most * 7 * step) - exact) < 1e-12);
                // Just short of the next crosscut nothing changes.
                CHECK(std::abs(order::enough_with(alike, step, (most * 7 + 6) * step) - exact) <
                      1e-12);
            }
        }
}

/// Of `order` pieces cut, `need` good ones: at most order − need are spoilt among them.
double enough_of(int need, int order, double chance) {
    return order::enough_with({{step, chance, static_cast<std::size_t>(need)}}, step,
                              (order - need) * step);
}

TEST_CASE("the published table of the cumulative binomial distribution") {
    // n, k, p and the printed probability of at most k in n: a table A1 of a statistics text
    // (scribd document 413754319), four decimals.
    struct Row {
        int n;
        int k;
        double p;
        double printed;
    };
    for (const Row& row : {Row{3, 1, .10, .9720}, Row{4, 1, .05, .9860}, Row{5, 1, .05, .9774},
                           Row{5, 1, .10, .9185}, Row{5, 2, .10, .9914}, Row{6, 1, .05, .9672},
                           Row{6, 1, .10, .8857}, Row{6, 2, .10, .9842}, Row{7, 1, .05, .9556},
                           Row{7, 1, .10, .8503}, Row{7, 2, .10, .9743}, Row{7, 2, .20, .8520},
                           Row{7, 3, .20, .9667}, Row{8, 1, .05, .9428}, Row{8, 1, .10, .8131}}) {
        CAPTURE(row.n);
        CAPTURE(row.k);
        CAPTURE(row.p);
        CHECK(std::abs(enough_of(row.n - row.k, row.n, row.p) - row.printed) <= 0.5e-4);
    }
}

TEST_CASE("how many to order to be 95 % sure, by the same sums") {
    // Own reading of that table where remakes can be spoilt too.
    const auto ordered = [](int need, double chance) {
        const Um spare =
            order::film_for({{step, chance, static_cast<std::size_t>(need)}}, step, 0.95);
        return need + static_cast<int>(spare / step);
    };
    CHECK(ordered(5, .10) == 7);
    CHECK(ordered(6, .10) == 8);
    CHECK(ordered(8, .10) == 11);
    CHECK(ordered(10, .10) == 13);
}

TEST_CASE("many pieces that are seldom spoiled: the published Poisson sums") {
    // Mean, k and the printed probability of at most k (scribd document 96601458), four decimals.
    struct Row {
        double mean;
        int k;
        double printed;
    };
    constexpr std::size_t many = 2'000'000;
    for (const Row& row :
         {Row{.5, 1, .9098}, Row{.5, 2, .9856}, Row{1, 2, .9197}, Row{1, 3, .9810},
          Row{1.5, 3, .9344}, Row{1.5, 4, .9814}, Row{2, 4, .9473}, Row{2, 5, .9834},
          Row{2.5, 5, .9580}, Row{3, 5, .9161}, Row{3, 6, .9665}, Row{4, 7, .9489},
          Row{4, 8, .9786}, Row{5, 8, .9319}, Row{5, 9, .9682}}) {
        CAPTURE(row.mean);
        CAPTURE(row.k);
        const std::vector<Remakes> seldom{{step, row.mean / static_cast<double>(many), many}};
        CHECK(std::abs(order::enough_with(seldom, step, row.k * step) - row.printed) <= 0.6e-4);
    }
}

TEST_CASE("so many pieces that none spoiled is rarer than a double can say") {
    // ln(1 − r)^n is −2107 here; the sum by logarithms.
    constexpr int n = 20'000;
    constexpr double r = 0.1;
    const std::vector<Remakes> alike{{3 * step, r, n}};
    for (const int most : {2'100, 2'222, 2'300}) {
        double sum = 0;
        for (int j = 0; j <= most; ++j)
            sum += std::exp(std::lgamma(n + j) - std::lgamma(j + 1) - std::lgamma(n) +
                            j * std::log(r) + n * std::log1p(-r));
        CAPTURE(most);
        CHECK(std::abs(order::enough_with(alike, step, most * 3 * step) - sum) < 1e-9);
    }
}

/// Piece by piece, spoilt 0, 1, 2 … times: the plainest way.
std::vector<double> by_enumeration(const std::vector<Remakes>& remakes, std::size_t steps) {
    std::vector<double> f(steps + 1, 0);
    f[0] = 1;
    for (const Remakes& some : remakes)
        for (std::size_t i = 0; i < some.count; ++i) {
            std::vector<double> g(steps + 1, 0);
            for (std::size_t s = 0; s <= steps; ++s) {
                double times = 1 - some.chance;
                for (std::size_t at = s; at <= steps;
                     at += static_cast<std::size_t>(some.cost / step)) {
                    g[at] += f[s] * times;
                    times *= some.chance;
                }
            }
            f = g;
        }
    return f;
}

TEST_CASE("pieces of all kinds: every way they can be spoiled, added up") {
    Chance chance(7);
    for (int i = 0; i < 300; ++i) {
        std::vector<Remakes> remakes;
        for (std::size_t kinds = chance.between(1, 6); kinds > 0; --kinds)
            remakes.push_back({static_cast<Um>(chance.between(1, 40)) * step,
                               static_cast<double>(chance.between(0, 60)) / 100,
                               chance.between(1, 4)});
        CAPTURE(i);
        constexpr std::size_t steps = 200;
        const std::vector<double> f = by_enumeration(remakes, steps);
        double sum = 0;
        double furthest = 0;
        order::SpoiltFilm spoilt(remakes, step);
        for (std::size_t s = 0; s <= steps; ++s, spoilt.go_on()) {
            sum += f[s];
            furthest = std::max(furthest, std::abs(spoilt.probability() - sum));
        }
        CHECK(furthest < 1e-12);
    }
}

TEST_CASE("costs round up to the ruler") {
    constexpr Um eighth = 3'175;
    CHECK(order::film_for({{eighth + 1, 0.5, 1}}, eighth, 0.7) == 2 * eighth);
    CHECK(order::film_for({{eighth, 0.5, 1}}, eighth, 0.7) == eighth);
    CHECK(order::film_for({{eighth, 0.5, 1}}, eighth, 0.5) == 0);
}

const std::string bare = "roll: {width: 1012 mm, trim: 6 mm}\ndirection: one-way\n"
                         "allowances: {handling: 0}\nsold: [{by: 1 m, price: 10}]\n";

order::Outcome planned(const std::string& panels, const std::string& of, double sure) {
    order::Request made;
    made.vehicles = {vehicle(panels)};
    made.film = film(of);
    made.sure_percent = sure;
    return order::run(std::move(made));
}

TEST_CASE("a remake costs its shorter side where it may be turned, else the side that lies along") {
    const std::string sizes = "size: [900, 400], edges: none, redo: 30 %";
    // No offcut is worth keeping, from which it could be cut again.
    const std::string tidy = bare + "worth keeping: {length: 5 m, width: 5 m}\n";
    const auto one_way = planned("  a: {forward: right, " + sizes + "}\n", tidy, 80);
    const auto any = planned("  a: {direction: any, forward: right, " + sizes + "}\n", tidy, 80);
    REQUIRE(one_way.order.spare);
    REQUIRE(any.order.spare);
    CHECK(one_way.order.spare->needed == 900'000);
    CHECK(any.order.spare->needed == 400'000);
}

TEST_CASE("the first remakes from offcuts cost nothing: by hand and by enumeration") {
    // Two pieces, each spoiled once more with r: k remakes with (k + 1) (1 - r)² r^k.
    const double r = .2;
    const auto p = [&](int k) { return (k + 1) * (1 - r) * (1 - r) * std::pow(r, k); };
    Remakes some{3 * step, r, 2};
    some.kept = 2;
    CHECK(std::abs(order::enough_with({some}, step, 0) - (p(0) + p(1) + p(2))) < 1e-12);
    CHECK(std::abs(order::enough_with({some}, step, 3 * step) - (p(0) + p(1) + p(2) + p(3))) <
          1e-12);
    CHECK(order::film_for({some}, step, p(0) + p(1) + p(2) - 1e-9) == 0);
    CHECK(order::film_for({some}, step, p(0) + p(1) + p(2) + 1e-9) == 3 * step);
    // Beside another kind, which has no offcut: within 3 steps one of it at most, or a third one.
    const Remakes other{2 * step, .1, 1};
    const double within = (p(0) + p(1) + p(2)) * (.9 + .09) + p(3) * .9;
    CHECK(std::abs(order::enough_with({some, other}, step, 3 * step) - within) < 1e-12);
}

TEST_CASE("offcuts kept for remakes never make the chance smaller, nor the film longer") {
    std::uint64_t state = 7;
    const auto next = [&](std::uint64_t below) {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return (state >> 33) % below;
    };
    for (int job = 0; job < 200; ++job) {
        std::vector<Remakes> bare;
        for (std::uint64_t i = 0; i <= next(4); ++i)
            bare.push_back({static_cast<Um>(1 + next(9)) * step,
                            .01 * static_cast<double>(1 + next(40)), 1 + next(6)});
        std::vector<Remakes> kept = bare;
        for (Remakes& some : kept)
            some.kept = next(3);
        const Um film = static_cast<Um>(next(30)) * step;
        CHECK(order::enough_with(kept, step, film) >= order::enough_with(bare, step, film) - 1e-12);
        CHECK(order::film_for(kept, step, .95) <= order::film_for(bare, step, .95));
    }
}

TEST_CASE("a small piece is cut again from the offcut that holds it, its arrow respected") {
    // A lid of 900 × 600 leaves 900 × 400 of the 1000 mm beside it.
    const std::string lid = "  a: {size: [900, 600], forward: right, edges: none, redo: 0 %}\n";
    const std::string worth = bare + "worth keeping: {length: 300 mm, width: 100 mm}\n";
    const auto plan = [&](const std::string& small) { return planned(lid + small, worth, 95); };
    const auto fits =
        plan("  b: {size: [880, 390], forward: right, edges: none, redo: 20 %}\n"
             "  c: {size: [880, 590], forward: right, edges: none, redo: 0 %}\n");
    REQUIRE(fits.order.spare);
    REQUIRE(fits.order.spare->kept.size() == 1);
    CHECK(fits.order.spare->kept.front().panel == 1);
    CHECK(fits.order.spare->kept.front().pieces == 1);
    // Spoiled once of 100 times 16, twice 3: 95 of 100 jobs need nothing beside the offcut.
    CHECK(fits.order.spare->needed == 0);
    // Across the arrow it would fit, along it does not.
    const auto turned =
        plan("  b: {size: [390, 880], forward: right, edges: none, redo: 20 %}\n"
             "  c: {size: [880, 110], forward: right, edges: none, redo: 0 %}\n");
    REQUIRE(turned.order.spare);
    CHECK(turned.order.spare->kept.empty());
    CHECK(turned.order.spare->needed > 0);
}

TEST_CASE("an order with spare: what is needed, how often it suffices, which panel costs most") {
    order::Request request;
    request.vehicles = {
        vehicle("  a: {size: [900, 900], forward: up, edges: none, redo: 10 %, count: 3}\n"
                "  b: {size: [500, 900], forward: right, edges: none, redo: 20 %}\n")};
    request.film = film(bare);
    request.sure_percent = 90;
    request.weigh_the_spare = true;
    const auto outcome = order::run(std::move(request));
    REQUIRE(outcome.plan);
    REQUIRE(outcome.order.spare);
    const Spare& spare = *outcome.order.spare;
    // 3.2 m are needed. Within 0.9 m: nothing spoilt, b once, or one of the three a.
    const double none = .9 * .9 * .9 * .8;
    // 4 m must be bought without spare too, so 0.8 m are left over: b once, nothing else.
    CHECK(spare.bare_order == Length::from_mm(4'000));
    CHECK(std::abs(spare.bare_percent - 100 * none * (1 + .2)) < 1e-10);
    const double within_900 = none * (1 + .2 + 3 * .1);
    CHECK(within_900 < .90);
    CHECK(spare.needed == 1'400'000); // b twice fits 1 m; one of each needs 1.4 m
    CHECK(outcome.order.length() == Length::from_mm(5'000));
    CHECK(spare.costliest_panel == 0);
    CHECK(spare.costliest_film == 900'000); // b alone: once, 96 of 100
    CHECK(spare.enough_percent >= 90);
    REQUIRE(spare.redo.size() == 2);
    CHECK_FALSE(spare.redo.front().assumed);
}

TEST_CASE("from stock the spare is what is left of the batch: too little is told") {
    order::Request made;
    made.vehicles = {vehicle("  a: {size: [900, 900], forward: up, edges: none, redo: 10 %}\n")};
    made.film = film(bare);
    made.sure_percent = 95;
    made.stock = stock("  - {name: A, film: F, width: 1012, length: 1000, batch: B}\n");
    const auto little = order::run(made);
    REQUIRE(little.order.spare);
    CHECK(std::abs(little.order.spare->enough_percent - 90) < 1e-10);
    CHECK(warnings_with(little.faults, "0.800 m more of the same batch") == 1);
    made.stock = stock("  - {name: A, film: F, width: 1012, length: 1000, batch: B}\n"
                       "  - {name: B, film: F, width: 1012, length: 900, batch: B}\n");
    const auto enough = order::run(made);
    REQUIRE(enough.order.spare);
    CHECK(std::abs(enough.order.spare->enough_percent - 99) < 1e-10);
    CHECK(warnings_with(enough.faults, "more of the same batch") == 0);
}

TEST_CASE("a flaw counts as spare lost only as far as it lies behind what is cut") {
    order::Request made;
    made.vehicles = {vehicle("  a: {size: [900, 900], forward: up, edges: none, redo: 10 %}\n")};
    made.film = film(bare);
    made.sure_percent = 95;
    const auto enough_percent = [&](const std::string& flaws) {
        // Cut are the first 1000 of 2000 mm; a remake takes 900.
        made.stock = stock("  - {name: A, film: F, width: 1012, length: 2000, batch: B, flaws: [" +
                           flaws + "]}\n");
        const auto outcome = order::run(made);
        REQUIRE(outcome.order.spare);
        CHECK(outcome.plan->layout().rolls.front().length == 1'000'000);
        return outcome.order.spare->enough_percent;
    };
    const std::string before = "{from: 50, to: 100}";
    CHECK(std::abs(enough_percent(before) - 99) < 1e-10);
    CHECK(std::abs(enough_percent(before + ", {from: 1900, to: 2500}") - 99) < 1e-10);
    CHECK(std::abs(enough_percent(before + ", {from: 1899, to: 2500}") - 90) < 1e-10);
}

TEST_CASE("spare on several rolls: as many remakes as fit on each, between the two figures") {
    // Alike pieces: a roll holds a whole number of remakes, so that the truth is
    // 1 - r^(remakes that fit + 1) for a single piece.
    for (const int along : {700, 900, 1100, 1300}) {
        CAPTURE(along);
        const auto outcome = planned("  a: {size: [900, " + std::to_string(along) +
                                         "], forward: up, edges: none, redo: 90 %}\n",
                                     "roll: {width: 1012 mm, trim: 6 mm, length: 3 m}\n"
                                     "direction: one-way\nallowances: {wrap: 0, handling: 0}\n"
                                     "sold: [{by: 1 m, price: 10}, {by: 3 m, price: 24}]\n",
                                     80);
        REQUIRE(outcome.plan);
        REQUIRE(outcome.order.spare);
        REQUIRE(outcome.order.lines.size() > 1);
        const Spare& spare = *outcome.order.spare;
        CHECK(spare.needed > 3'000 * um_per_mm);
        std::int64_t fit = 0;
        for (std::size_t i = 0; i < outcome.order.lines.size(); ++i) {
            const Um length = outcome.order.lines[i].length().floor_um();
            CHECK(length <= 3'000 * um_per_mm);
            CHECK(length >= along * um_per_mm);
            fit += length / (along * um_per_mm) - (i == 0 ? 1 : 0);
        }
        const double truth = 100 * (1 - std::pow(.9, static_cast<double>(fit + 1)));
        CHECK(spare.surely_percent <= truth + 1e-9);
        CHECK(spare.enough_percent >= truth - 1e-9);
        CHECK(spare.enough_percent >= 80 - 1e-9);
    }
}

double assumed(const std::string& panel, const std::string& more) {
    Job job;
    job.vehicles = {vehicle("  " + panel)};
    job.film = film("roll: {width: 1524 mm}\ndirection: any\n" + more);
    const RedoChance chance = order::redo_chance(job, 0, 0);
    CHECK(chance.assumed);
    return chance.percent;
}

TEST_CASE("assumed chances: by what the panel is, the film's kind, the stretch asked") {
    // The middle of what is common practice, no source.
    const std::string flat = ": {size: [500, 500], edges: none}\n";
    const std::string domed = ": {size: [500, 500], edges: none, crown: {wide: 30, high: 0}}\n";
    CHECK(assumed("hood" + flat, "kind: cast\n") == 3);
    CHECK(assumed("Left Mirror Cap" + flat, "kind: cast\n") == 20);
    CHECK(assumed("front bumper" + flat, "kind: cast\n") == 15);
    CHECK(assumed("rear bumper" + flat, "kind: cast\n") == 11.5);
    CHECK(assumed("something else" + flat, "kind: cast\n") == 5);
    CHECK(assumed("hood" + flat, "kind: hybrid\n") == 3 * 1.75);
    CHECK(assumed("hood" + flat, "kind: calendered\n") == 3);
    CHECK(assumed("hood" + domed, "kind: calendered\n") == 3 * 2.5);
    CHECK(std::abs(assumed("hood" + flat, "kind: polyurethane\n") - 3 * 1.3) < 1e-12);
    CHECK(assumed("front door jamb" + flat, "kind: cast\n") == 8);
    // By whole words: a sliding door is no lid, a bonnet a hood.
    CHECK(assumed("sliding door lower" + flat, "kind: cast\n") == 3);
    CHECK(assumed("bonnet" + flat, "kind: cast\n") == 3);
    CHECK(assumed("front wing" + flat, "kind: cast\n") == 4);
    CHECK(assumed("boot lid" + flat, "kind: cast\n") == 5.5);
    // What could be two things is reckoned as what is not known, until the file says.
    CHECK(assumed("wing" + flat, "kind: cast\n") == 5);
    CHECK(assumed("wing: {is: front fender, size: [500, 500], edges: none}\n", "kind: cast\n") ==
          4);
}

TEST_CASE("a panel that asks more stretch than the film gives is spoiled in 40 of 100 jobs") {
    const std::string dome = "  hood: {size: [400, 400], forward: up, edges: none, crown: {wide: "
                             "90, high: 90}}\n";
    const auto outcome = planned(dome, bare + "stretch: 2 %\nkind: cast\n", 50);
    REQUIRE(outcome.order.spare);
    CHECK(outcome.order.spare->redo.front().percent == 40);
    const auto soft = planned(dome, bare + "stretch: 60 %\nkind: cast\n", 50);
    REQUIRE(soft.order.spare);
    CHECK(soft.order.spare->redo.front().percent == 3);
}

} // namespace
} // namespace pelt::order_test
