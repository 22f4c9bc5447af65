// SPDX-License-Identifier: MIT
// Limits of the check: right up to one passes, a micrometre beyond it is told.
#include "verify/made_plans.hpp"
#include "verify/verify.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <utility>
#include <vector>

using namespace pelt;
using namespace pelt::test;

namespace {

using Told = std::vector<std::string>;

Told faults_of(const RightPlan& plan) {
    return verify::verify(std::make_shared<const Job>(plan.job), plan.layout).faults;
}

std::string with(std::string text, const std::string& old, const std::string& now) {
    return text.replace(text.find(old), old.size(), now);
}

const std::string film = "film: Test film\n"
                         "demonstration: yes\n"
                         "roll: {width: 1524 mm, trim: 6 mm, length: 30 m}\n"
                         "direction: one-way\n"
                         "allowances: {bleed: 10 mm, handling: {want: 40 mm, least: 15 mm}, "
                         "gap: 4 mm}\n";

/// One panel, so many millimetres along and across the roll.
RightPlan plan_of(const std::string& size, CutBy by, const std::string& direction = "one-way") {
    return made_plan("vehicle: V\ndemonstration: yes\npanels:\n  hood: {size: " + size +
                         ", forward: right, edges: none}\n",
                     with(film, "one-way", direction), by, {});
}

/// The same from the shelf: no new film, so no bound.
RightPlan from_stock(RightPlan plan) {
    plan.job.rolls.front().is_new = false;
    plan.layout.bound = {0, ""};
    return plan;
}

const std::string hood = "panel 'hood', centre, copy 1";

} // namespace

TEST_CASE("a piece lies up to the trim of either edge of the roll and no further") {
    RightPlan plan = plan_of("[500, 400]", CutBy::contour);
    const Roll& roll = plan.job.rolls.front();
    const Box box = box_of(plan.job.pieces.front().shapes.front().outline.outer);
    GridPoint& at = placement_of(plan, {"hood"}).at;
    const Told outside{hood + " on " + roll.name + ": outside the usable film"};
    at.y = roll.trim - box.low.y;
    CHECK(faults_of(plan) == Told{});
    at.y -= 1;
    CHECK(faults_of(plan) == outside);
    at.y = roll.width - roll.trim - box.high.y;
    CHECK(faults_of(plan) == Told{});
    at.y += 1;
    CHECK(faults_of(plan) == outside);
}

TEST_CASE("across the roll the margins shrink to the least and no further") {
    // 1482 + 2 × 15 is the usable width.
    RightPlan plan = plan_of("[500, 1482]", CutBy::straight);
    CHECK(faults_of(plan) == Told{});
    plan.job.film.allowances.handling.least += 1;
    CHECK(faults_of(plan) == Told{hood + ": not the margins to grip that are wanted"});
}

TEST_CASE("new film has the width and the trim of the film, a roll from stock its own") {
    const RightPlan plan = plan_of("[500, 400]", CutBy::contour);
    const Roll& roll = plan.job.rolls.front();
    for (const auto& [width, trim] : {std::pair{1, 0}, std::pair{0, -1}}) {
        RightPlan other = plan;
        other.job.rolls.front().width += width;
        other.job.rolls.front().trim += trim;
        CHECK(faults_of(other) == Told{roll.name + ": not the film's width and trim"});
        CHECK(faults_of(from_stock(other)) == Told{});
    }
}

TEST_CASE("the bound is about new film only") {
    RightPlan plan = from_stock(plan_of("[500, 400]", CutBy::contour));
    CHECK(faults_of(plan) == Told{});
    plan.layout.bound.length = 1;
    CHECK(faults_of(plan) == Told{"the bound is longer than the new film"});
}

TEST_CASE("no roll is used for nothing") {
    RightPlan plan = plan_of("[500, 400]", CutBy::contour);
    plan.job.rolls.push_back(plan.job.rolls.front());
    plan.job.rolls.back().name = "idle";
    CHECK(faults_of(plan) == Told{});
    plan.layout.rolls.push_back({plan.job.rolls.size() - 1, 0, {}, {}});
    CHECK(faults_of(plan) == Told{"idle: used for nothing"});
}

TEST_CASE("a piece touches a flaw and lies over none, wherever the flaw is told to end") {
    const RightPlan plan = plan_of("[500, 1400]", CutBy::contour);
    const Placement& lies = plan.layout.rolls.front().placements.front();
    const Box box =
        box_of(placed(plan.job.pieces.front().shapes.front().outline.outer, lies.turn, lies.at));
    const auto is_over = [&](const Flaw& flaw) {
        RightPlan flawed = plan;
        flawed.job.rolls.front().flaws = {flaw};
        const Told told = faults_of(flawed);
        CHECK((told.empty() ||
               told == Told{hood + " on " + plan.job.rolls.front().name + ": over a flaw"}));
        return !told.empty();
    };
    const Um end = box.high.x;
    CHECK_FALSE(is_over({end, end + 1'000, {}, {}}));
    CHECK(is_over({end - 1, end + 1'000, {}, {}}));
    CHECK_FALSE(is_over({0, end, box.high.y, {}}));
    CHECK(is_over({0, end, box.high.y - 1, {}}));
    CHECK_FALSE(is_over({0, end, {}, box.low.y}));
    CHECK(is_over({0, end, {}, box.low.y + 1}));
}

TEST_CASE("a flaw told without a place across runs from edge to edge") {
    RightPlan plan = plan_of("[500, 400]", CutBy::contour);
    Roll& roll = plan.job.rolls.front();
    const Box box = box_of(plan.job.pieces.front().shapes.front().outline.outer);
    placement_of(plan, {"hood"}).at.y = roll.width - roll.trim - box.high.y;
    roll.flaws = {{0, 1'000, {}, {}}};
    CHECK(faults_of(plan) == Told{hood + " on " + roll.name + ": over a flaw"});
}

TEST_CASE("a slanted side may pass beside a flaw within the piece's box") {
    RightPlan plan = made_plan("vehicle: V\ndemonstration: yes\npanels:\n  fin: {outline: [[0, 0], "
                               "[500, 0], [0, 500]], forward: right, edges: none}\n",
                               film, CutBy::contour, {});
    const Placement& lies = plan.layout.rolls.front().placements.front();
    const Box box =
        box_of(placed(plan.job.pieces.front().shapes.front().outline.outer, lies.turn, lies.at));
    Roll& roll = plan.job.rolls.front();
    const Flaw beyond{box.high.x - 100'000, box.high.x, box.high.y - 100'000, {}};
    roll.flaws = {beyond};
    CHECK(faults_of(plan) == Told{});
    roll.flaws.front().from = box.low.x;
    CHECK(faults_of(plan) == Told{"panel 'fin', centre, copy 1 on " + roll.name + ": over a flaw"});
}

TEST_CASE("only film that may lie in any direction comes from a roll whose arrow is not known") {
    for (const char* direction : {"one-way", "two-way", "any"}) {
        RightPlan plan = plan_of("[500, 400]", CutBy::contour, direction);
        plan.job.rolls.front().arrow_known = false;
        CAPTURE(direction);
        CHECK(faults_of(plan).empty() == (std::string(direction) == "any"));
    }
}

TEST_CASE("free turns are for film of any direction cut along its outline") {
    const auto turned_freely = [](CutBy by, const std::string& direction) {
        RightPlan plan = plan_of("[500, 500]", by, direction);
        plan.job.free_turns = true;
        Placement& lies = plan.layout.rolls.front().placements.front();
        std::erase(plan.job.pieces.front().shapes.front().turns, lies.turn);
        plan.job.pieces.front().shapes.front().turns.push_back(half_turn);
        return faults_of(plan);
    };
    CHECK(turned_freely(CutBy::contour, "any") == Told{});
    const std::string may_not = ": turned as its film may not lie";
    const std::string roll = " on " + plan_of("[500, 500]", CutBy::contour).job.rolls[0].name;
    CHECK(turned_freely(CutBy::contour, "two-way") == Told{hood + roll + may_not});
    CHECK(turned_freely(CutBy::straight, "any") == Told{hood + roll + may_not});
}
