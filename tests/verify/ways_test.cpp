// SPDX-License-Identifier: MIT
// Which way a panel looks and film lies: what is asked of edges, openings, seams and turns by it.
#include "verify/one_panel.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

using namespace pelt;
using namespace pelt::test;

TEST_CASE("a panel of a side without an arrow of its own looks to the nose") {
    for (const CutBy by : {CutBy::straight, CutBy::contour}) {
        RightPlan plan = plan_of_everything(by);
        for (const char* name : {"quarter", "wing", "wall"}) {
            REQUIRE(panel_of(plan, name).forward == Heading::left);
            panel_of(plan, name).forward.reset();
        }
        CHECK(faults_of(plan) == Told{});
        panel_of(plan, "quarter").sides = Sides::right;
        CHECK(says(faults_of(plan), "panel 'quarter'"));
    }
}

TEST_CASE("an edge's later entry takes the place of the earlier one, tuck or stop") {
    for (const char* edges :
         {"{all: {stop: 5}, bottom: {wrap: 20}}", "{all: {wrap: 20}, top: {stop: 5}}"})
        for (const CutBy by : {CutBy::straight, CutBy::contour})
            plan_of(std::string("size: [500, 400], forward: right, edges: ") + edges, by);
}

TEST_CASE("what works through film is covered by film without metal alone") {
    const auto covered = [](const std::string& what, const std::string& metal) {
        RightPlan plan = made_plan("vehicle: V\npanels:\n  hood: {size: [500, 400], forward: "
                                   "right, edges: none, openings: {o: "
                                   "{outline: [[200, 200], [300, 200], [300, 300], [200, 300]], "
                                   "behind: cover, keep clear: " +
                                       what + "}}}\nhardware:\n  cover: {tool: hook}\n",
                                   film + metal, CutBy::straight, {});
        CHECK(faults_of(plan) == Told{});
        const bool is_covered = piece_of(plan, {"hood"}).wrapped.holes.empty();
        plan.job.film.holds_metal = is_covered ? HoldsMetal::yes : HoldsMetal::no;
        const bool another = what == "radar" || what == "aerial";
        CHECK(faults_of(plan).empty() != another);
        return is_covered;
    };
    const std::string without = "holds metal: no\n";
    for (const char* what : {"radar", "aerial"}) {
        CAPTURE(what);
        CHECK(covered(what, without));
        CHECK_FALSE(covered(what, "holds metal: yes\n"));
        CHECK_FALSE(covered(what, "")); // nobody knows
    }
    for (const char* what : {"lamp", "camera", "ultrasonic"})
        CHECK_FALSE(covered(what, without));
}

TEST_CASE("an edge askew by half a right angle is at the top or at the bottom, not at a side") {
    const std::string cut_corners =
        "outline: [[100, 0], [400, 0], [500, 100], [500, 300], [400, 400], "
        "[100, 400], [0, 300], [0, 100]], forward: right, edges: ";
    for (const char* edges :
         {"{all: {wrap: 0}, top: {wrap: 20}}", "{all: {wrap: 0}, bottom: {wrap: 20}}",
          "{all: {wrap: 0}, left: {wrap: 20}}", "{all: {wrap: 0}, right: {wrap: 20}}"})
        plan_of(cut_corners + edges);
}

TEST_CASE(
    "whichever way a panel is drawn, its pieces lap as the check asks, and not the other way") {
    for (const char* name : {"side wall", "hood", "front bumper", "hatch"})
        for (const char* sides : {"left", "right", "both", "center"})
            for (const char* forward : {"right", "left", "up", "down"})
                for (const char* line : {"[[200, 0], [200, 400]]", "[[0, 150], [500, 150]]",
                                         "[[250, 0], [250, 400]]", "[[0, 200], [500, 200]]"}) {
                    const std::string panel =
                        std::string("sides: ") + sides + ", forward: " + forward +
                        ", size: [500, 400], edges: none, seam lines: [{line: " + line +
                        ", use: always}]";
                    CAPTURE(name);
                    CAPTURE(panel);
                    RightPlan plan = made_plan("vehicle: V\npanels:\n  " + std::string(name) +
                                                   ": {" + panel + "}\n",
                                               film, CutBy::straight, {});
                    CHECK(faults_of(plan) == Told{});
                    for (Seam& seam : plan.job.seams)
                        std::swap(seam.upper_part, seam.under_part);
                    CHECK(says(faults_of(plan), "of its drawing as no seam tells"));
                }
}

TEST_CASE("on a hood it hangs on the middle which piece lies on top") {
    RightPlan plan = plan_of("size: [500, 400], forward: up, edges: none, "
                             "seam lines: [{line: [[200, 0], [200, 400]], use: always}]");
    // Now the line lies on the other side of the middle.
    for (Point& p : developed_of(plan, "hood").blanks.front().outline.points)
        p.x = p.x > 250 ? 300 : p.x;
    CHECK(says(faults_of(plan), "of its drawing as no seam tells"));
}

TEST_CASE("no shape is offered a turn that its film may not have") {
    struct Row {
        const char* direction;
        std::vector<int> may; ///< degrees
        int may_not;
    };
    for (const Row& row : std::vector<Row>{{"one-way", {0}, 180},
                                           {"one-way", {0}, 90},
                                           {"two-way", {0, 180}, 90},
                                           {"two-way", {0, 180}, 270},
                                           {"any", {0, 90, 180, 270}, 45}}) {
        RightPlan plan = plan_of(flat + ", direction: " + row.direction);
        std::vector<Turn>& turns = piece_of(plan, {"hood"}).shapes.front().turns;
        for (const int degrees : row.may)
            turns.push_back({degrees * 1'000});
        CAPTURE(row.direction);
        CHECK(faults_of(plan) == Told{});
        turns.push_back({row.may_not * 1'000});
        CHECK(faults_of(plan) ==
              Told{"panel 'hood', centre, copy 1: turned as its film may not lie"});
    }
}

TEST_CASE(
    "what pieces that lie askew lose to the grid is taken off the area that bounds the length") {
    RightPlan plan = plan_of(flat + ", direction: any");
    const Box box = box_of(cut_outline(plan));
    const Um usable = plan.job.film.usable_width();
    plan.layout.bound.length = box.along() * box.across() / usable; // rounded down: just under it
    const std::string under = "the bound is under the pieces' area over the usable width";
    CHECK(faults_of(plan) == Told{under});
    plan.job.free_turns = true;
    CHECK(faults_of(plan) == Told{});
    plan.layout.bound.length -= 2;
    CHECK(faults_of(plan) == Told{under});
}
