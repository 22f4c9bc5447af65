// SPDX-License-Identifier: MIT
// Random jobs on random shelves: rolls and remnants with flaws, ends, batches, trims, costs, arrows
// that are not known. Every plan has passed `verify`, which throws where one of them is not kept;
// the plainest of its rules are looked at here once more.
//   PELT_RANDOM_JOBS=10000 test_order -tc="random jobs*"    more of them
#include "job.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>
#include <set>

namespace pelt::order_test {
namespace {

std::string one_of(Chance& chance, const std::vector<std::string>& words) {
    return words[chance.below(words.size())];
}

std::string number(Chance& chance, std::size_t low, std::size_t high) {
    return std::to_string(chance.between(low, high));
}

std::string random_form(Chance& chance) {
    const std::size_t wide = chance.between(80, 900);
    const std::size_t high = chance.between(80, 900);
    const auto at = [](std::size_t x, std::size_t y) {
        return "[" + std::to_string(x) + ", " + std::to_string(y) + "]";
    };
    if (chance.below(3) > 0)
        return "size: " + at(wide, high);
    const std::size_t cut = chance.between(10, std::min(wide, high) / 2);
    return "outline: [" + at(0, 0) + ", " + at(wide, 0) + ", " + at(wide, high - cut) + ", " +
           at(wide - cut, high) + ", " + at(0, high) + "]";
}

std::string random_panels(Chance& chance) {
    std::string text;
    const std::size_t count = chance.between(1, 6);
    for (std::size_t i = 0; i < count; ++i) {
        text += "  p" + std::to_string(i) + ": {" + random_form(chance) +
                ", forward: up, edges: none, direction: " +
                one_of(chance, {"one-way", "two-way", "any"});
        text += chance.below(3) == 0 ? ", batch free: yes" : "";
        text += chance.below(4) == 0 ? ", sides: both" : "";
        text += chance.below(5) == 0 ? ", count: 2}\n" : "}\n";
    }
    return text;
}

std::string random_flaws(Chance& chance) {
    std::string text;
    for (std::size_t count = chance.below(3), from = chance.below(100); count > 0; --count) {
        const std::size_t to = from + chance.between(1, 300);
        text += (text.empty() ? ", flaws: [{from: " : ", {from: ") + std::to_string(from) +
                ", to: " + std::to_string(to);
        text += chance.below(2) == 0
                    ? ", low: " + number(chance, 0, 60) + ", high: " + number(chance, 90, 180) + "}"
                    : "}";
        from = to + chance.between(1, 900);
    }
    return text.empty() ? "" : text + "]";
}

std::string random_rolls(Chance& chance) {
    std::string text;
    const std::size_t count = chance.between(1, 5);
    for (std::size_t i = 0; i < count; ++i) {
        // Long enough for its flaws, which may not begin beyond its end.
        text += "  - {name: R" + std::to_string(i) +
                ", film: F, width: " + (chance.below(3) == 0 ? number(chance, 200, 1400) : "1012") +
                ", length: " +
                (chance.below(4) == 0 ? number(chance, 1, 300) : number(chance, 100, 5000));
        const std::size_t batch = chance.below(4);
        text += batch > 0 ? ", batch: B" + std::to_string(batch) : "";
        text += chance.below(4) == 0 ? ", arrow: unknown" : "";
        text += chance.below(4) == 0 ? ", trim: " + number(chance, 0, 80) : "";
        text += chance.below(4) == 0 ? ", cost: " + number(chance, 0, 15) : "";
        text += (chance.below(2) == 0 ? random_flaws(chance) : "") + "}\n";
    }
    return text;
}

std::string random_film(Chance& chance) {
    std::string text = "roll: {width: 1012 mm, trim: 6 mm";
    text += chance.below(2) == 0 ? ", length: " + number(chance, 2, 9) + " m}\n" : "}\n";
    text += "direction: " + one_of(chance, {"one-way", "two-way", "any"}) + "\n";
    text += "allowances: {gap: " + number(chance, 0, 6) + ", handling: " + number(chance, 0, 20) +
            ", bleed: " + number(chance, 0, 12) + "}\n";
    text += "sold: [{by: 1 m, price: 10}";
    text += chance.below(2) == 0 ? ", {by: 2 m, price: 17}]\n" : "]\n";
    return text;
}

/// A shelf that can be read: flaws beyond a roll's end are no flaws.
std::vector<StockRoll> random_shelf(Chance& chance, std::string& text) {
    for (;;) {
        text = random_rolls(chance);
        const auto reading = read::stock(source("stock:\n" + text));
        if (reading.value)
            return reading.value->rolls;
    }
}

Money cost_of_stock(const order::Outcome& outcome, const std::vector<StockRoll>& shelf) {
    Money sum;
    for (const UsedRoll& used : outcome.plan->layout().rolls)
        for (const StockRoll& roll : shelf)
            if (outcome.plan->job().rolls[used.roll].name == "stock " + roll.name)
                sum = sum + roll.cost.of(used.length);
    return sum;
}

bool touches(const Box& box, const Flaw& flaw) {
    return box.low.x < flaw.to && box.high.x > flaw.from && (!flaw.low || box.high.y > *flaw.low) &&
           (!flaw.high || box.low.y < *flaw.high);
}

/// Ends, edges, batches; flaws and arrows as far as boxes tell.
void expect_rules_kept(const order::Outcome& outcome, CutBy by) {
    const Job& job = outcome.plan->job();
    std::set<std::string> batches;
    for (const UsedRoll& used : outcome.plan->layout().rolls) {
        const Roll& roll = job.rolls[used.roll];
        CHECK(used.length <= roll.available.value_or(used.length));
        for (const Placement& p : used.placements) {
            const Piece& piece = job.pieces[p.piece];
            const Box box = box_of(placed(piece.shapes[p.shape].outline, p.turn, p.at).outer);
            CHECK(box.low.x >= 0);
            CHECK(box.high.x <= used.length);
            CHECK(box.low.y >= roll.trim);
            CHECK(box.high.y <= roll.width - roll.trim);
            CHECK((roll.arrow_known || piece.direction == Direction::any));
            for (const Flaw& flaw : roll.flaws)
                CHECK_FALSE((by == CutBy::straight && touches(box, flaw)));
            if (!piece.batch_free)
                batches.insert(roll.batch.empty() ? (roll.is_new ? "new" : roll.name)
                                                  : "batch " + roll.batch);
        }
    }
    CHECK(batches.size() <= 1);
}

struct RandomJob {
    order::Request request;
    std::string text; ///< all of it, to be shown where something is wrong
};

RandomJob random_job(Chance& chance) {
    RandomJob out;
    const std::string panels = random_panels(chance);
    const std::string of = random_film(chance);
    std::string rolls;
    out.request.vehicles = {vehicle(panels)};
    out.request.film = film(of);
    out.request.stock = random_shelf(chance, rolls);
    out.request.by = chance.below(4) == 0 ? CutBy::contour : CutBy::straight;
    out.request.effort.trial = true;
    out.text = panels + of + rolls;
    return out;
}

template <class Check>
void for_random_jobs(std::uint64_t seed, int fair_share, Check check) {
    Chance chance(seed);
    const int jobs = asked_jobs("PELT_RANDOM_JOBS", fair_share);
    for (int i = 0; i < jobs; ++i) {
        RandomJob job = random_job(chance);
        CAPTURE(job.text);
        CAPTURE(i);
        CHECK_NOTHROW(check(std::move(job.request), chance));
    }
}

TEST_CASE("random jobs with random stock: verified, and never dearer than without the stock") {
    for_random_jobs(6, 400, [](order::Request made, Chance&) {
        const std::vector<StockRoll> shelf = made.stock;
        const CutBy by = made.by;
        order::Request without = made;
        without.stock.clear();
        const auto outcome = order::run(std::move(made));
        const auto bought = order::run(std::move(without));
        CAPTURE(first_fault(outcome.faults));
        REQUIRE(outcome.plan);
        REQUIRE(bought.plan);
        REQUIRE(outcome.order.total);
        REQUIRE(bought.order.total);
        CHECK(*outcome.order.total + cost_of_stock(outcome, shelf) <= *bought.order.total);
        expect_rules_kept(outcome, by);
    });
}

bool has_stock(const order::Outcome& outcome) {
    const std::vector<Roll>& rolls = outcome.plan->job().rolls;
    return !rolls.empty() && !rolls.front().is_new;
}

TEST_CASE("random jobs half done: verified, and short only where film is bought") {
    for_random_jobs(61, 100, [](order::Request made, Chance& chance) {
        const CutBy by = made.by;
        made.selection.spoiled = {"p0"};
        if (chance.below(2) == 0)
            made.selection.done = {"p0"};
        const auto outcome = order::run(std::move(made));
        CAPTURE(first_fault(outcome.faults));
        REQUIRE(outcome.plan);
        expect_rules_kept(outcome, by);
        const auto told =
            std::count_if(outcome.faults.begin(), outcome.faults.end(),
                          [](const Fault& fault) { return fault.severity == Severity::job; });
        const bool buys = !outcome.order.lines.empty();
        CHECK(told == (buys && has_stock(outcome) ? 1 : 0));
    });
}

} // namespace
} // namespace pelt::order_test
