// SPDX-License-Identifier: MIT
// Cut lists written by hand: the check counts turns of the film as a person at the table does.
#include "verify/checks.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace pelt {
namespace {

constexpr Um mm = um_per_mm;

using Boxes = std::vector<Box>;

/// A roll 1 m wide and 2 m long without trim, with pieces on it and what is cut, in millimetres.
struct OnRoll {
    Job job;
    Layout layout;

    explicit OnRoll(const Boxes& boxes) {
        job.vehicles.emplace_back();
        job.rolls.push_back({"roll", true, "", 1'000 * mm, 0, 2'000 * mm, true, {}});
        job.film.allowances.ruler = mm;
        job.stages.reset();
        layout.rolls.emplace_back();
        for (const Box& box : boxes)
            add(box);
    }

    OnRoll& across(Um x, Um from = 0, Um to = 1'000) {
        layout.rolls.front().cuts.push_back({{x * mm, from * mm}, {x * mm, to * mm}});
        return *this;
    }
    OnRoll& along(Um y, Um from, Um to) {
        layout.rolls.front().cuts.push_back({{from * mm, y * mm}, {to * mm, y * mm}});
        return *this;
    }
    OnRoll& stages(int most) {
        job.stages = most;
        return *this;
    }

    std::vector<std::string> faults() const {
        verify::Sentences out;
        verify::check_cuts(job, layout, out);
        return out;
    }

private:
    void add(const Box& box) {
        const int index = static_cast<int>(job.pieces.size());
        Panel panel;
        panel.name = "p" + std::to_string(index + 1);
        job.vehicles.front().panels.push_back(panel);
        const Um wide = box.along() * mm;
        const Um high = box.across() * mm;
        Piece piece;
        piece.ids.push_back({0, index, Side::centre, 1, 1, 1, PieceKind::main, ""});
        piece.shapes.push_back({{{{0, 0}, {wide, 0}, {wide, high}, {0, high}}, {}}, {no_turn}});
        job.pieces.push_back(piece);
        layout.rolls.front().placements.push_back(
            {job.pieces.size() - 1, 0, 0, no_turn, {box.low.x * mm, box.low.y * mm}});
    }
};

using Told = std::vector<std::string>;

const std::string too_often = ": the film has been turned too often";

TEST_CASE("a slit along the whole roll comes second: the roll's end counts as the first cut") {
    OnRoll roll(Boxes{{{0, 0}, {500, 400}}, {{500, 0}, {1'000, 400}}});
    roll.along(400, 0, 2'000).across(500, 0, 400).across(1'000, 0, 400);
    CHECK(roll.stages(3).faults() == Told{});
    // The second crosscut trims a piece that is alone in its sheet.
    CHECK(roll.stages(2).faults() == Told{"roll, cut 2" + too_often});
    CHECK(roll.stages(1).faults() ==
          Told{"roll, cut 1" + too_often, "roll, cut 2" + too_often, "roll, cut 3" + too_often});
}

TEST_CASE("beyond the turns allowed one more cut may trim a piece alone in its sheet, no other") {
    const auto in_a_corner = [](Um wide, Um high) {
        OnRoll roll(Boxes{{{0, 0}, {wide, high}}});
        roll.stages(2).across(500).along(400, 0, 500);
        return roll;
    };
    CHECK(in_a_corner(500, 400).faults() == Told{});
    CHECK(in_a_corner(450, 400).across(450, 0, 400).faults() == Told{});
    CHECK(in_a_corner(450, 300).across(450, 0, 400).along(300, 0, 450).faults() ==
          Told{"roll, cut 4" + too_often});
    // What is left over need not be cut at all.
    CHECK(in_a_corner(500, 400).across(250, 400, 1'000).faults() ==
          Told{"roll, cut 3" + too_often});
}

TEST_CASE("no film with pieces on it is longer than the table, left-over film may be") {
    const std::string too_long = ": what it takes off is longer than the table";
    OnRoll strip(Boxes{{{800, 0}, {1'300, 1'000}}});
    strip.across(800).across(1'300);
    strip.job.table = 500 * mm;
    CHECK(strip.faults() == Told{});
    *strip.job.table -= 1;
    CHECK(strip.faults() == Told{"roll, cut 2" + too_long});
    for (const bool upper : {false, true}) {
        const Um low = upper ? 400 : 0;
        const Um high = upper ? 1'000 : 400;
        OnRoll slit(Boxes{{{0, low}, {500, high}}});
        slit.along(400, 0, 2'000).across(500, low, high);
        slit.job.table = 1'999 * mm;
        CAPTURE(upper);
        CHECK(slit.faults() == Told{"roll, cut 1" + too_long});
        *slit.job.table += mm;
        CHECK(slit.faults() == Told{});
    }
}

TEST_CASE("strips off the roll keep the order of laying, parts of a strip need not") {
    const Boxes boxes{{{0, 0}, {500, 400}}, {{500, 0}, {1'000, 400}}};
    OnRoll strips(boxes);
    strips.across(500).along(400, 0, 500).across(1'000).along(400, 500, 1'000);
    OnRoll parts(boxes);
    parts.across(1'000).along(400, 0, 1'000).across(500, 0, 400);
    for (OnRoll* roll : {&strips, &parts}) {
        roll->job.in_order = true;
        roll->job.laying = {{0}, {1}};
        CHECK(roll->faults() == Told{});
        roll->job.laying = {{1}, {0}};
    }
    CHECK(strips.faults() == Told{"panel 'p1', centre, copy 1: comes off the roll before pieces "
                                  "that are laid earlier"});
    CHECK(parts.faults() == Told{});
}

TEST_CASE("a cut runs from edge to edge of one sheet, strictly inside it") {
    const auto then = [](Um from_x, Um from_y, Um to_x, Um to_y) {
        OnRoll roll(Boxes{});
        roll.across(500).along(400, 0, 500);
        roll.layout.rolls.front().cuts.push_back(
            {{from_x * mm, from_y * mm}, {to_x * mm, to_y * mm}});
        return roll.faults();
    };
    CHECK(then(200, 0, 200, 400) == Told{});
    CHECK(then(200, 400, 200, 0) == Told{});
    CHECK(then(0, 200, 500, 200) == Told{});
    const Told nothing{"roll, cut 3: does not run from edge to edge of anything that is left"};
    CHECK(then(200, 0, 200, 399) == nothing);
    CHECK(then(200, 1, 200, 400) == nothing);
    CHECK(then(200, 0, 200, 1'000) == nothing);
    CHECK(then(0, 200, 499, 200) == nothing);
    CHECK(then(1, 200, 500, 200) == nothing);
    CHECK(then(0, 0, 0, 400) == nothing);
    CHECK(then(500, 0, 500, 400) == nothing);
    CHECK(then(0, 400, 500, 400) == nothing);
    CHECK(then(0, 0, 500, 0) == nothing);
}

TEST_CASE("a piece that is free is not cut again") {
    OnRoll roll(Boxes{{{0, 0}, {500, 1'000}}});
    roll.across(500);
    CHECK(roll.faults() == Told{});
    roll.across(250);
    CHECK(roll.faults() == Told{"panel 'p1', centre, copy 1: the cuts do not free it"});
}

TEST_CASE("numbers follow the order in which cuts free the pieces") {
    OnRoll roll(Boxes{{{0, 0}, {500, 1'000}}, {{500, 0}, {1'000, 1'000}}});
    roll.across(500).across(1'000);
    CHECK(roll.faults() == Told{});
    std::vector<Placement>& placements = roll.layout.rolls.front().placements;
    std::swap(placements[0], placements[1]);
    CHECK(roll.faults() ==
          Told{"panel 'p1', centre, copy 1: its number is not the order of coming free"});
}

TEST_CASE(
    "steps of the ruler count from the free end and from the trim, the far trim is a cut too") {
    const auto slit_at = [](Um y) {
        OnRoll roll(Boxes{});
        roll.job.rolls.front().trim = 6 * mm;
        roll.job.film.allowances.ruler = 10 * mm;
        return roll.across(500).along(y, 0, 500).faults();
    };
    const Told off{"roll, cut 2: not on a whole step of the ruler"};
    CHECK(slit_at(406) == Told{});
    CHECK(slit_at(994) == Told{}); // 988 mm from the trim
    CHECK(slit_at(400) == off);
    CHECK(slit_at(984) == off);
    const auto crosscut_at = [](Um x) {
        OnRoll roll(Boxes{});
        roll.job.film.allowances.ruler = 10 * mm;
        return roll.across(x).faults();
    };
    CHECK(crosscut_at(500) == Told{});
    CHECK(crosscut_at(505) == Told{"roll, cut 1: not on a whole step of the ruler"});
}

} // namespace
} // namespace pelt
