// SPDX-License-Identifier: MIT
// Each check by its own sentence: a plan with several things wrong is refused by any of them, so
// only the sentence shows that the check which is meant was the one to notice.
#include "verify/one_panel.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::test;

namespace {

/// Moves all points near the highest (or, with a sign, the lowest) of them that way.
void move_end(Ring& ring, Um GridPoint::*axis, int end, Um by) {
    const auto less = [&](GridPoint a, GridPoint b) { return end * (a.*axis) < end * (b.*axis); };
    const Um last = (*std::max_element(ring.begin(), ring.end(), less)).*axis;
    for (GridPoint& p : ring)
        if (std::abs(p.*axis - last) < 30'000)
            p.*axis += end * by;
}

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
