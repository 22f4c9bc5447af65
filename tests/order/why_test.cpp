// SPDX-License-Identifier: MIT
// What binds a length, and what would make it shorter.
#include "job.hpp"
#include "order/binding.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

namespace pelt::order_test {
namespace {

const std::string bare = "roll: {width: 1012 mm, trim: 6 mm}\ndirection: one-way\n"
                         "allowances: {handling: 0, gap: 0, bleed: 0}\n";

order::Request request(const std::string& panels, CutBy by = CutBy::straight) {
    order::Request made;
    made.vehicles = {vehicle(panels)};
    made.film = film(bare);
    made.by = by;
    made.find_binding = true;
    return made;
}

Um new_length_of(const order::Outcome& outcome) {
    Um length = 0;
    for (const UsedRoll& used : outcome.plan->layout().rolls)
        length += used.length;
    return length;
}

std::set<std::string> binding_panels(const order::Outcome& outcome) {
    std::set<std::string> names;
    for (const PieceId& id : outcome.binding.pieces)
        names.insert(
            outcome.plan->job().vehicles[0].panels[static_cast<std::size_t>(id.panel)].name);
    return names;
}

std::string hardest_panel(const order::Outcome& outcome) {
    if (outcome.binding.panels.empty())
        return "";
    const auto panel = static_cast<std::size_t>(outcome.binding.panels.front().panel);
    return outcome.plan->job().vehicles[0].panels[panel].name;
}

const std::string two_strips = "  long: {size: [900, 600], forward: right, edges: none}\n"
                               "  short: {size: [700, 400], forward: right, edges: none}\n"
                               "  wide: {size: [500, 1000], forward: right, edges: none}\n";

TEST_CASE("the longer of two side by side binds, the other does not") {
    for (const CutBy by : {CutBy::straight, CutBy::contour}) {
        CAPTURE(name_of(by));
        const auto outcome = order::run(request(two_strips, by));
        REQUIRE(outcome.plan);
        CHECK(new_length_of(outcome) == 1'400'000);
        CHECK(binding_panels(outcome) == std::set<std::string>{"long", "wide"});
        REQUIRE(outcome.binding.panels.size() == 2);
        for (const Pull& pull : outcome.binding.panels)
            CHECK(pull.film_a_millimetre == 1'000);
    }
}

TEST_CASE("a panel that lies twice in the chain moves the length twice") {
    for (const CutBy by : {CutBy::straight, CutBy::contour}) {
        CAPTURE(name_of(by));
        const auto outcome =
            order::run(request("  door: {sides: both, size: [800, 900], edges: none}\n"
                               "  roof: {size: [500, 1000], forward: right, edges: none}\n",
                               by));
        REQUIRE(outcome.plan);
        CHECK(hardest_panel(outcome) == "door");
        REQUIRE(outcome.binding.panels.size() == 2);
        CHECK(outcome.binding.panels.front().film_a_millimetre == 2'000);
        CHECK(outcome.binding.panels.back().film_a_millimetre == 1'000);
    }
}

TEST_CASE("what a panel pulls is what the length grows by when it is made so much longer") {
    // Straight cuts, optimal on both sides: planned again a millimetre longer.
    Chance chance(3);
    int compared = 0;
    for (int i = 0; i < 60; ++i) {
        std::vector<std::pair<int, int>> sizes;
        for (std::size_t n = chance.between(2, 4); n > 0; --n)
            sizes.emplace_back(static_cast<int>(chance.between(200, 900)),
                               static_cast<int>(chance.between(520, 1000)));
        const auto panels = [&](int longer) {
            std::string text;
            for (int p = 0; p < static_cast<int>(sizes.size()); ++p)
                text += "  p" + std::to_string(p) + ": {size: [" +
                        std::to_string(sizes[static_cast<std::size_t>(p)].first +
                                       (p == longer ? 1 : 0)) +
                        ", " + std::to_string(sizes[static_cast<std::size_t>(p)].second) +
                        "], forward: right, edges: none}\n";
            return text;
        };
        const auto outcome = order::run(request(panels(-1)));
        REQUIRE(outcome.plan);
        for (const Pull& pull : outcome.binding.panels) {
            const auto longer = order::run(request(panels(pull.panel)));
            REQUIRE(longer.plan);
            CHECK(new_length_of(longer) - new_length_of(outcome) == pull.film_a_millimetre);
            ++compared;
        }
    }
    CHECK(compared >= 120);
}

bool has(const std::vector<order::WhatIf>& all, const std::string& part) {
    return std::any_of(all.begin(), all.end(), [&](const order::WhatIf& what_if) {
        return what_if.what.find(part) != std::string::npos;
    });
}

TEST_CASE("every way to save film is a job that plans and is checked") {
    order::Request made = request(two_strips);
    made.tolerance = 4'000;
    made.in_order = true;
    const auto outcome = order::run(made);
    REQUIRE(outcome.plan);
    const std::vector<order::WhatIf> all = order::what_ifs(made, outcome);
    for (const char* part : {"1220 mm wide", "either way", "any way", "--stages any", "--in-order",
                             "seam across the long", "exact"}) {
        CAPTURE(part);
        CHECK(has(all, part));
    }
    for (const order::WhatIf& what_if : all) {
        CAPTURE(what_if.what);
        const auto other = order::run(what_if.request);
        CHECK(other.plan.has_value());
    }
}

TEST_CASE("nothing is offered that is so already") {
    order::Request made =
        request("  p: {size: [900, 600], forward: right, edges: none, seam: never}\n");
    made.film.direction = Direction::any;
    made.film.width = 2'000'000;
    made.stages = std::nullopt;
    CHECK(order::what_ifs(made, order::run(made)).empty());
}

TEST_CASE("a seam shortens what only its length made long") {
    // 1900 along leaves half the width empty; two halves lie side by side.
    order::Request made = request("  sill: {size: [1900, 450], forward: right, edges: none}\n");
    made.film.allowances.overlap = 10'000;
    const auto outcome = order::run(made);
    REQUIRE(outcome.plan);
    CHECK(new_length_of(outcome) == 1'900'000);
    for (const order::WhatIf& what_if : order::what_ifs(made, outcome)) {
        if (what_if.what != "with a seam across the sill")
            continue;
        const auto other = order::run(what_if.request);
        REQUIRE(other.plan);
        CHECK(new_length_of(other) == 960'000);
    }
    CHECK(has(order::what_ifs(made, outcome), "with a seam across the sill"));
}

} // namespace
} // namespace pelt::order_test
