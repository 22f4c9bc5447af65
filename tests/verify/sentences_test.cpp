// SPDX-License-Identifier: MIT
// Each check by its own sentence: a plan with several things wrong is refused by any of them, so
// only the sentence shows that the check which is meant was the one to notice.
#include "verify/made_plans.hpp"
#include "verify/told.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::test;

namespace {

const std::string film = "film: Test film\n"
                         "roll: {width: 1524 mm, trim: 6 mm, length: 30 m}\n"
                         "direction: one-way\n"
                         "allowances: {bleed: 10 mm, handling: {want: 40 mm, least: 15 mm}, "
                         "overlap: 12 mm, gap: 4 mm}\n";

RightPlan plan_of(const std::string& panel, CutBy by = CutBy::contour) {
    const RightPlan plan =
        made_plan("vehicle: V\npanels:\n  hood: {" + panel + "}\n", film, by, {});
    REQUIRE(faults_of(plan) == Told{});
    return plan;
}

Ring& cut_outline(RightPlan& plan, int part = 1) {
    return piece_of(plan, {"hood", Side::centre, part}).shapes.front().outline.outer;
}

/// Moves all points near the highest (or, with a sign, the lowest) of them that way.
void move_end(Ring& ring, Um GridPoint::*axis, int end, Um by) {
    const auto less = [&](GridPoint a, GridPoint b) { return end * (a.*axis) < end * (b.*axis); };
    const Um last = (*std::max_element(ring.begin(), ring.end(), less)).*axis;
    for (GridPoint& p : ring)
        if (std::abs(p.*axis - last) < 30'000)
            p.*axis += end * by;
}

const std::string flat = "size: [500, 400], forward: right, edges: none";
const std::string divided = flat + ", seam lines: [{line: [[200, 0], [200, 400]], use: always}]";

/// At which end along x a part of `divided` ends at the seam: 1 or -1.
int end_at_the_seam(RightPlan& plan, int part) {
    const auto middle = [&](int of) {
        const Box box = box_of(cut_outline(plan, of));
        return box.low.x + box.high.x;
    };
    return middle(part) < middle(3 - part) ? 1 : -1;
}

} // namespace

TEST_CASE("a cut outline that leaves too little or too much to grip at one side") {
    for (const Um by : {-200, 400}) {
        RightPlan plan = plan_of(flat);
        move_end(cut_outline(plan), &GridPoint::y, 1, by);
        CAPTURE(by);
        CHECK(says(faults_of(plan), by < 0 ? "leaves too little to grip at (250.000, 400.000)"
                                           : "leaves too much to grip at (250.000, 400.000)"));
    }
}

TEST_CASE("bleed at a seam, and film cut off at one") {
    for (const int part : {1, 2})
        for (const Um by : {3'000, -1'000}) {
            RightPlan plan = plan_of(divided);
            move_end(cut_outline(plan, part), &GridPoint::x, end_at_the_seam(plan, part), by);
            CAPTURE(part);
            CAPTURE(by);
            CHECK(says(faults_of(plan), "piece " + std::to_string(part) +
                                            (by > 0 ? " is cut with bleed at a seam"
                                                    : " is cut smaller than what stays on the "
                                                      "vehicle")));
        }
}

TEST_CASE("a notch in the cut outline that reaches the film between its corners") {
    RightPlan plan = plan_of(flat);
    Ring& ring = cut_outline(plan);
    const auto low = std::adjacent_find(
        ring.begin(), ring.end(), [](GridPoint a, GridPoint b) { return a.y == b.y && a.x < b.x; });
    REQUIRE(low != ring.end());
    ring.insert(low + 1, {{230'000, low->y}, {250'000, low->y + 20'000}, {270'000, low->y}});
    CHECK(says(faults_of(plan), "piece 1 is cut smaller than what stays on the vehicle"));
}

TEST_CASE("an outline that crosses itself, all but a little of it the right way round") {
    for (const bool cut : {false, true}) {
        RightPlan plan = plan_of(flat);
        Ring& ring = cut ? cut_outline(plan) : piece_of(plan, {"hood"}).wrapped.outer;
        const auto low = std::adjacent_find(ring.begin(), ring.end(), [](GridPoint a, GridPoint b) {
            return a.y == b.y && a.x < b.x;
        });
        REQUIRE(low != ring.end());
        const Um y = low->y;
        ring.insert(low + 1, {{300'000, y}, {300'000, y + 20'000}, {200'000, y - 20'000}});
        CAPTURE(cut);
        CHECK(says(faults_of(plan), "its outline is not a simple counter-clockwise ring"));
    }
}

TEST_CASE("two holes that share a side, upright or not") {
    for (const bool upright : {false, true}) {
        RightPlan plan = plan_of(flat);
        Piece& piece = piece_of(plan, {"hood"});
        for (const Um off : {0, 50'000}) {
            const Um x = 100'000 + (upright ? off : 0);
            const Um y = 100'000 + (upright ? 0 : off);
            piece.wrapped.holes.push_back(
                {{x, y}, {x, y + 50'000}, {x + 50'000, y + 50'000}, {x + 50'000, y}});
        }
        CAPTURE(upright);
        CHECK(says(faults_of(plan), "its outline is not a simple counter-clockwise ring"));
    }
}

TEST_CASE("an opening that a stop opens to the outside is cut on the vehicle all the same") {
    const std::string bay =
        ", edges: {all: 0, top: {stop: 10}}, openings: {bay: {wrap: 0, outline: "
        "[[200, 250], [300, 250], [300, 395], [200, 395]]}}";
    RightPlan plan = plan_of("size: [500, 400], forward: right" + bay);
    const Piece& piece = piece_of(plan, {"hood"});
    REQUIRE(piece.wrapped.outer.size() == 8); // the bay is part of its rim
    Ring& ring = cut_outline(plan);
    const Box film_box = box_of(piece.wrapped.outer);
    const Box box = box_of(ring);
    // The cut runs into the bay and along the film there.
    const Um bottom = film_box.low.y + 250'000;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint a = ring[i];
        const GridPoint b = ring[(i + 1) % ring.size()];
        if (a.y != box.high.y || b.y != box.high.y || a.x - b.x < 200'000)
            continue;
        const Um right = film_box.low.x + 300'000;
        const Um left = film_box.low.x + 200'000;
        ring.insert(ring.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                    {{right, a.y}, {right, bottom}, {left, bottom}, {left, a.y}});
        break;
    }
    REQUIRE(ring.size() == 8);
    CHECK(says(faults_of(plan), "is cut at the table where it is to be cut on the vehicle"));
}

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

TEST_CASE("no piece lies within another one") {
    RightPlan plan = made_plan("vehicle: V\npanels:\n  hood: {" + flat +
                                   "}\n  badge: {size: [50, 40], "
                                   "forward: right, edges: none}\n",
                               film, CutBy::contour, {});
    CHECK(faults_of(plan) == Told{});
    placement_of(plan, {"badge"}).at = {placement_of(plan, {"hood"}).at.x + 200'000,
                                        placement_of(plan, {"hood"}).at.y + 200'000};
    CHECK(says(faults_of(plan), "closer than the spacing"));
}

TEST_CASE("corners of two pieces are the gap apart across a diagonal, exactly") {
    RightPlan plan = plan_of(flat + ", count: 2");
    const Roll& roll = plan.job.rolls.front();
    const Box box = box_of(cut_outline(plan));
    std::vector<Placement>& lie = plan.layout.rolls.front().placements;
    REQUIRE(lie.size() == 2);
    plan.job.rolls.front().available.reset();
    lie[0].at = {-box.low.x, roll.trim - box.low.y};
    lie[1].at = {lie[0].at.x + box.along() + 2'400,
                 lie[0].at.y + box.across() + 3'200}; // 4 mm: 3-4-5
    plan.layout.rolls.front().length = 2 * box.along() + 2'400;
    CHECK(faults_of(plan) == Told{});
    lie[1].at.y -= 1;
    CHECK(says(faults_of(plan), "closer than the spacing"));
    // The other diagonal.
    std::swap(lie[0].at.y, lie[1].at.y);
    CHECK(says(faults_of(plan), "closer than the spacing"));
    lie[0].at.y += 1;
    CHECK(faults_of(plan) == Told{});
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
