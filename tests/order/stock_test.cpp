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
    CHECK(warnings_with(outcome.faults, "stock A is too short for one batch") == 1);
    const auto forces = [](const Fault& fault) {
        return fault.severity == Severity::remark &&
               fault.what == "pieces that force new film: roof";
    };
    CHECK(std::count_if(outcome.faults.begin(), outcome.faults.end(), forces) == 1);
}

// 1012.6 mm are no whole steps of 1 mm; the next step, 1013, lies beyond a roll of 1012.8.
TEST_CASE("a piece as wide as the film lies on a roll that is wider by less than a step") {
    const std::string odd = "roll: {width: 1012.6 mm}\ndirection: one-way\n"
                            "allowances: {handling: {want: 40, least: 0}}\n";
    const std::string panel = "  roof: {size: [1000, 1000], forward: up, edges: none}\n";
    for (const std::string width : {"1012.6", "1012.8", "1013", "1013.4"}) {
        CAPTURE(width);
        const auto outcome = order::run(
            request(panel, "  - {name: A, film: F, width: " + width + ", length: 1500}\n", odd));
        CHECK(rolls_used(outcome) == Names{"stock A"});
        CHECK(warnings_with(outcome.faults, "too short") == 0);
    }
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

TEST_CASE("film that may lie either way is directed too, however it is cut") {
    const std::string rolls = "  - {name: A, film: F, width: 1012, length: 2000, arrow: unknown}\n";
    const std::string either = "roll: {width: 1012 mm, trim: 6 mm}\ndirection: two-way\n"
                               "sold: [{by: 1 m, price: 10}]\n";
    for (const CutBy by : {CutBy::straight, CutBy::contour}) {
        CAPTURE(name_of(by));
        order::Request made = request(two_panels, rolls, either);
        made.by = by;
        CHECK(rolls_used(order::run(std::move(made))) == Names{"new 1"});
    }
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

TEST_CASE("half done and batch free: any film that is left will do") {
    const std::string rolls = "  - {name: A, film: F, width: 1012, length: 1000, batch: B1}\n"
                              "  - {name: B, film: F, width: 1012, length: 800, batch: B2}\n";
    order::Request made =
        request("  roof: {size: [1000, 1000], forward: up, edges: none, batch free: yes}\n"
                "  hood: {size: [1000, 800], forward: up, edges: none, batch free: yes}\n",
                rolls);
    made.selection.spoiled = {"roof", "hood"};
    const auto outcome = order::run(std::move(made));
    CHECK(job_faults(outcome.faults) == 0);
    CHECK(std::set<std::string>{"stock A", "stock B"} == [&] {
        const Names names = rolls_used(outcome);
        return std::set<std::string>(names.begin(), names.end());
    }());
}

TEST_CASE("half done: batch-free pieces go on other film, so that less of the batch is missing") {
    const std::string rolls = "  - {name: A, film: F, width: 1012, length: 1000, batch: B1}\n"
                              "  - {name: B, film: F, width: 1012, length: 800, batch: B2}\n";
    order::Request made =
        request("  roof: {size: [1000, 1000], forward: up, edges: none}\n"
                "  lid: {size: [1000, 600], forward: up, edges: none}\n"
                "  hood: {size: [1000, 800], forward: up, edges: none, batch free: yes}\n",
                rolls);
    made.selection.spoiled = {"roof", "lid", "hood"};
    const auto outcome = order::run(std::move(made));
    REQUIRE(outcome.plan);
    CHECK(job_faults(outcome.faults) == 1);
    REQUIRE(outcome.order.lines.size() == 1);
    CHECK(outcome.order.lines.front().batch == "B1");
    CHECK(outcome.plan->layout().rolls.back().length == 600'000);
}

} // namespace
} // namespace pelt::order_test
