// SPDX-License-Identifier: MIT
// Cut lists written by hand: the check counts turns of the film as a person at the table does.
#include "verify/checks.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace pelt {
namespace {

constexpr Um mm = um_per_mm;

/// A roll 1 m wide and 2 m long without trim, with pieces on it and what is cut, in millimetres.
struct OnRoll {
    Job job;
    Layout layout;

    explicit OnRoll(const std::vector<Box>& boxes) {
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
    OnRoll roll({{{0, 0}, {500, 400}}, {{500, 0}, {1'000, 400}}});
    roll.along(400, 0, 2'000).across(500, 0, 400).across(1'000, 0, 400);
    CHECK(roll.stages(3).faults() == Told{});
    // The second crosscut trims a piece that is alone in its sheet.
    CHECK(roll.stages(2).faults() == Told{"roll, cut 2" + too_often});
    CHECK(roll.stages(1).faults() ==
          Told{"roll, cut 1" + too_often, "roll, cut 2" + too_often, "roll, cut 3" + too_often});
}

} // namespace
} // namespace pelt
