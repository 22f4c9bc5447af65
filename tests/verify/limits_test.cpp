// SPDX-License-Identifier: MIT
// Limits of the check: right up to one passes, a micrometre beyond it is told.
#include "verify/made_plans.hpp"
#include "verify/verify.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::test;

namespace {

using Told = std::vector<std::string>;

Told faults_of(const RightPlan& plan) {
    return verify::verify(std::make_shared<const Job>(plan.job), plan.layout).faults;
}

const std::string film = "film: Test film\n"
                         "demonstration: yes\n"
                         "roll: {width: 1524 mm, trim: 6 mm, length: 30 m}\n"
                         "direction: one-way\n"
                         "allowances: {bleed: 10 mm, handling: {want: 40 mm, least: 15 mm}, "
                         "gap: 4 mm}\n";

/// One panel, so many millimetres along and across the roll.
RightPlan plan_of(const std::string& size, CutBy by) {
    return made_plan("vehicle: V\ndemonstration: yes\npanels:\n  hood: {size: " + size +
                         ", forward: right, edges: none}\n",
                     film, by, {});
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
