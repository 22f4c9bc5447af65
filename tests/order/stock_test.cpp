// SPDX-License-Identifier: MIT
// Stock: what is taken from the shelf, from which batch, around which flaws. Every plan has passed
// `verify`, which knows flaws, ends of rolls, arrows and batches; a layout that failed would throw.
#include "job.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

namespace pelt::order_test {
namespace {

const std::string two_panels = "  roof: {size: [1000, 1000], forward: up, edges: none}\n"
                               "  hood: {size: [1000, 800], forward: up, edges: none}\n";
const std::string plain = "roll: {width: 1012 mm, trim: 6 mm}\ndirection: one-way\n"
                          "sold: [{by: 1 m, price: 10}]\n";

order::Request request(const std::string& panels, const std::string& rolls,
                       const std::string& of = plain) {
    order::Request made;
    made.vehicles = {vehicle(panels)};
    made.film = film(of);
    if (!rolls.empty())
        made.stock = stock(rolls);
    return made;
}

std::vector<std::string> rolls_used(const order::Outcome& outcome) {
    std::vector<std::string> names;
    if (outcome.plan)
        for (const UsedRoll& used : outcome.plan->layout().rolls)
            names.push_back(outcome.plan->job().rolls[used.roll].name);
    return names;
}

using Names = std::vector<std::string>;

bool takes_new_film(const order::Outcome& outcome) {
    return std::any_of(
        outcome.plan->layout().rolls.begin(), outcome.plan->layout().rolls.end(),
        [&](const UsedRoll& used) { return outcome.plan->job().rolls[used.roll].is_new; });
}

TEST_CASE("stock that holds the job is taken and nothing is bought") {
    const auto outcome =
        order::run(request(two_panels, "  - {name: A, film: F, width: 1012, length: 2000}\n"));
    CHECK(rolls_used(outcome) == Names{"stock A"});
    CHECK(outcome.order.lines.empty());
    REQUIRE(outcome.order.total);
    CHECK(*outcome.order.total == Money{});
    CHECK(outcome.plan->layout().rolls.front().length == 1'800'000);
    CHECK(outcome.plan->layout().bound.length == 0);
}

TEST_CASE("no piece lies over a flaw: the roll is used around it") {
    const auto outcome =
        order::run(request(two_panels, "  - {name: A, film: F, width: 1012, length: 2200, flaws: "
                                       "[{from: 900, to: 1100}]}\n"));
    CHECK(rolls_used(outcome) == Names{"stock A"});
    CHECK(outcome.plan->layout().rolls.front().length == 2'100'000);
}

TEST_CASE("a flaw that leaves too little sends the whole job to new film, and says so") {
    const auto outcome =
        order::run(request(two_panels, "  - {name: A, film: F, width: 1012, length: 2200, flaws: "
                                       "[{from: 900, to: 1300}]}\n"));
    CHECK(rolls_used(outcome) == Names{"new 1"});
    CHECK(warnings_with(outcome.faults, "stock A does not hold") == 1);
    CHECK(warnings_with(outcome.faults, "roof forces a new roll") == 1);
}

TEST_CASE("the job comes from one batch, but for panels that are batch free") {
    const std::string rolls = "  - {name: A, film: F, width: 1012, length: 1000, batch: B1}\n"
                              "  - {name: B, film: F, width: 1012, length: 1000, batch: B2}\n";
    CHECK(rolls_used(order::run(request(two_panels, rolls))) == Names{"new 1"});
    const std::string free_hood =
        "  roof: {size: [1000, 1000], forward: up, edges: none}\n"
        "  hood: {size: [1000, 800], forward: up, edges: none, batch free: yes}\n";
    CHECK(rolls_used(order::run(request(free_hood, rolls))) == Names{"stock A", "stock B"});
    const std::string same = "  - {name: A, film: F, width: 1012, length: 1000, batch: B1}\n"
                             "  - {name: B, film: F, width: 1012, length: 1000, batch: B1}\n";
    CHECK(rolls_used(order::run(request(two_panels, same))) == Names{"stock A", "stock B"});
}

TEST_CASE("a remnant whose arrow is not known takes no directed film") {
    const std::string rolls = "  - {name: A, film: F, width: 1012, length: 2000, arrow: unknown}\n";
    CHECK(rolls_used(order::run(request(two_panels, rolls))) == Names{"new 1"});
    const std::string anyway = "roll: {width: 1012 mm, trim: 6 mm}\ndirection: any\n"
                               "sold: [{by: 1 m, price: 10}]\n";
    CHECK(rolls_used(order::run(request(two_panels, rolls, anyway))) == Names{"stock A"});
}

TEST_CASE("stock that is worth more than new film stays on the shelf") {
    CHECK(rolls_used(order::run(request(
              two_panels, "  - {name: A, film: F, width: 1012, length: 2000, cost: 11.20}\n"))) ==
          Names{"new 1"});
    // 1.8 m at 11 are 19.80, under the 20 of two new metres.
    CHECK(rolls_used(order::run(request(
              two_panels, "  - {name: A, film: F, width: 1012, length: 2000, cost: 11}\n"))) ==
          Names{"stock A"});
    CHECK(rolls_used(order::run(
              request(two_panels, "  - {name: A, film: F, width: 1012, length: 2000, cost: {by: "
                                  "1 yd, price: 10.00}}\n"))) == Names{"stock A"});
}

TEST_CASE("rolls of other films are passed over, with a word when none is left") {
    const auto outcome =
        order::run(request(two_panels, "  - {name: A, film: G, width: 1012, length: 9000}\n"));
    CHECK(rolls_used(outcome) == Names{"new 1"});
    CHECK(warnings_with(outcome.faults, "no roll in stock is of the film 'F'") == 1);
}

TEST_CASE("the shortest roll that holds everything is taken") {
    CHECK(rolls_used(order::run(request(
              two_panels, "  - {name: A, film: F, width: 1012, length: 5000, batch: B}\n"
                          "  - {name: B, film: F, width: 1012, length: 1900, batch: B}\n"
                          "  - {name: C, film: F, width: 1012, length: 900, batch: B}\n"))) ==
          Names{"stock B"});
}

order::Request half_done(const std::string& rolls) {
    order::Request made = request(two_panels, rolls);
    made.selection.done = {"roof"};
    made.selection.spoiled = {"roof", "hood"};
    return made;
}

std::size_t job_faults(const Faults& faults) {
    return static_cast<std::size_t>(std::count_if(
        faults.begin(), faults.end(), [](const Fault& f) { return f.severity == Severity::job; }));
}

TEST_CASE("half done and enough left: the rest is laid on it, nothing is bought") {
    const auto outcome =
        order::run(half_done("  - {name: A, film: F, width: 1012, length: 1800}\n"));
    CHECK(rolls_used(outcome) == Names{"stock A"});
    CHECK(outcome.order.lines.empty());
    CHECK(job_faults(outcome.faults) == 0);
}

TEST_CASE(
    "half done and too little left: as much as can be goes on it, the rest on the same batch") {
    const auto outcome =
        order::run(half_done("  - {name: A, film: F, width: 1012, length: 1700, batch: B7}\n"
                             "  - {name: B, film: F, width: 1012, length: 700, batch: B8}\n"));
    CHECK(rolls_used(outcome) == Names{"stock A", "new 1"});
    REQUIRE(outcome.plan);
    CHECK(outcome.plan->layout().rolls.back().length == 800'000);
    REQUIRE(outcome.order.lines.size() == 1);
    CHECK(outcome.order.lines.front().batch == "B7");
    CHECK(job_faults(outcome.faults) == 1);
    const auto fault = std::find_if(outcome.faults.begin(), outcome.faults.end(),
                                    [](const Fault& f) { return f.severity == Severity::job; });
    REQUIRE(fault != outcome.faults.end());
    CHECK(fault->what == "what is left is too short: hood finds no place on it");
    CHECK(fault->remedy == "0.800 m more of the same batch (B7) would do");
}

TEST_CASE("a roll whose batch is not known is gone on with from more of its own") {
    const auto outcome =
        order::run(half_done("  - {name: A, film: F, width: 1012, length: 1700}\n"));
    CHECK(rolls_used(outcome) == Names{"stock A", "new 1"});
    REQUIRE(outcome.order.lines.size() == 1);
    CHECK(outcome.order.lines.front().batch == "that of stock A");
}

TEST_CASE("half done without stock: the rest is bought, and nothing is wrong") {
    const auto outcome = order::run(half_done(""));
    CHECK(rolls_used(outcome) == Names{"new 1"});
    CHECK(job_faults(outcome.faults) == 0);
}

std::string random_panels(Chance& chance) {
    static const std::vector<std::string> directions{"one-way", "two-way", "any"};
    std::string text;
    const std::size_t count = chance.between(1, 6);
    for (std::size_t i = 0; i < count; ++i) {
        text += "  p" + std::to_string(i) + ": {size: [" + std::to_string(chance.between(80, 900)) +
                ", " + std::to_string(chance.between(80, 900)) + "], forward: up, edges: none" +
                ", direction: " + directions[chance.below(3)];
        text += chance.below(3) == 0 ? ", batch free: yes" : "";
        text += chance.below(4) == 0 ? ", sides: both" : "";
        text += chance.below(5) == 0 ? ", count: 2}\n" : "}\n";
    }
    return text;
}

std::string random_rolls(Chance& chance) {
    std::string text;
    const std::size_t count = chance.between(1, 5);
    for (std::size_t i = 0; i < count; ++i) {
        text += "  - {name: R" + std::to_string(i) + ", film: F, width: " +
                std::to_string(chance.below(3) == 0 ? chance.between(200, 1400) : 1012) +
                ", length: " + std::to_string(chance.between(100, 5000));
        const std::size_t batch = chance.below(4);
        text += batch > 0 ? ", batch: B" + std::to_string(batch) : "";
        text += chance.below(4) == 0 ? ", arrow: unknown" : "";
        text += chance.below(4) == 0 ? ", cost: " + std::to_string(chance.below(15)) : "";
        if (chance.below(2) == 0) {
            const std::size_t from = chance.below(100);
            text += ", flaws: [{from: " + std::to_string(from) +
                    ", to: " + std::to_string(from + chance.between(1, 300));
            text += chance.below(2) == 0 ? ", low: 50, high: 150}]" : "}]";
        }
        text += "}\n";
    }
    return text;
}

void expect_a_plan(order::Request made) {
    order::Request without = made;
    without.stock.clear();
    const auto outcome = order::run(std::move(made));
    const auto bought = order::run(std::move(without));
    CAPTURE(first_fault(outcome.faults));
    CHECK(outcome.plan.has_value() == bought.plan.has_value());
    if (outcome.plan && bought.plan) {
        REQUIRE(outcome.order.total);
        REQUIRE(bought.order.total);
        CHECK(*outcome.order.total <= *bought.order.total);
    }
}

TEST_CASE("random jobs with random stock: verified, and never dearer than without the stock") {
    Chance chance(6);
    const int jobs = asked_jobs("PELT_RANDOM_JOBS", 400);
    for (int i = 0; i < jobs; ++i) {
        const std::string panels = random_panels(chance);
        const std::string rolls = random_rolls(chance);
        CAPTURE(panels);
        CAPTURE(rolls);
        order::Request made = request(panels, rolls);
        made.effort.trial = true;
        CHECK_NOTHROW(expect_a_plan(std::move(made)));
    }
}

void expect_to_go_on(order::Request made) {
    const auto outcome = order::run(std::move(made));
    CAPTURE(first_fault(outcome.faults));
    REQUIRE(outcome.plan); // verified: one batch, no flaw covered
    const bool buys = takes_new_film(outcome);
    const bool has_stock =
        outcome.plan->job().rolls.size() > 0 && !outcome.plan->job().rolls.front().is_new;
    CHECK(job_faults(outcome.faults) == (buys && has_stock ? 1U : 0U));
    CHECK(buys == !outcome.order.lines.empty());
}

TEST_CASE(
    "random jobs half done, with random stock: verified, and short only where film is bought") {
    Chance chance(61);
    const int jobs = asked_jobs("PELT_RANDOM_JOBS", 80);
    for (int i = 0; i < jobs; ++i) {
        const std::string panels = random_panels(chance);
        const std::string rolls = random_rolls(chance);
        CAPTURE(panels);
        CAPTURE(rolls);
        order::Request made = request(panels, rolls);
        made.selection.spoiled = {"p0"};
        if (chance.below(2) == 0)
            made.selection.done = {"p0"};
        made.effort.trial = true;
        CHECK_NOTHROW(expect_to_go_on(std::move(made)));
    }
}

} // namespace
} // namespace pelt::order_test
