// SPDX-License-Identifier: MIT
// Right plans pass; a right plan with one thing made wrong never does.
//   PELT_SPOILED_LAYOUTS=10000 test_verify -tc="every mutant*"     so many of every kind
#include "asked_jobs.hpp"
#include "verify/right_plans.hpp"
#include "verify/verify.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <memory>
#include <string>
#include <vector>

using namespace pelt;
using test::Dice;
using test::RightPlan;

namespace {

bool passes(const RightPlan& plan) {
    return verify::verify(std::make_shared<const Job>(plan.job), plan.layout).plan.has_value();
}

/// Makes one thing wrong. False: this plan has nothing of that kind to spoil.
struct Mutation {
    std::string name;
    std::function<bool(RightPlan&, Dice&)> apply;
};

template <class T>
T& any(std::vector<T>& list, Dice& dice) {
    return list[static_cast<std::size_t>(dice.roll(0, static_cast<std::int64_t>(list.size()) - 1))];
}
UsedRoll& any_roll(RightPlan& plan, Dice& dice) {
    return any(plan.layout.rolls, dice);
}
Placement& any_placement(RightPlan& plan, Dice& dice) {
    return any(any_roll(plan, dice).placements, dice);
}
Piece& any_piece(RightPlan& plan, Dice& dice) {
    return any(plan.job.pieces, dice);
}

const std::vector<Mutation>& mutations_of_both() {
    static const std::vector<Mutation> list{
        {"a piece shifted across by a micrometer below the trim",
         [](RightPlan& p, Dice& d) { return any_placement(p, d).at.y -= 1, true; }},
        {"a piece shifted along by a micrometer into its neighbor or over the end",
         [](RightPlan& p, Dice& d) { return any_placement(p, d).at.x += 1, true; }},
        {"a piece shifted back by a micrometer",
         [](RightPlan& p, Dice& d) { return any_placement(p, d).at.x -= 1, true; }},
        {"a piece not placed",
         [](RightPlan& p, Dice& d) {
             auto& list = any_roll(p, d).placements;
             list.erase(list.begin() + d.roll(0, static_cast<std::int64_t>(list.size()) - 1));
             return true;
         }},
        {"a piece placed twice",
         [](RightPlan& p, Dice& d) {
             UsedRoll& used = any_roll(p, d);
             used.placements.push_back(any(used.placements, d));
             return true;
         }},
        {"a piece turned half round",
         [](RightPlan& p, Dice& d) { return any_placement(p, d).turn = half_turn, true; }},
        {"a piece turned by a quarter",
         [](RightPlan& p, Dice& d) { return any_placement(p, d).turn = quarter_turn, true; }},
        {"a copy that is another piece's number",
         [](RightPlan& p, Dice& d) {
             Placement& placement = any_placement(p, d);
             placement.copy = p.job.pieces[placement.piece].ids.size();
             return true;
         }},
        {"a length a micrometer too long",
         [](RightPlan& p, Dice& d) { return any_roll(p, d).length += 1, true; }},
        {"a length a micrometer too short",
         [](RightPlan& p, Dice& d) { return any_roll(p, d).length -= 1, true; }},
        {"a roll that is shorter than what is taken off it",
         [](RightPlan& p, Dice& d) {
             const UsedRoll& used = any_roll(p, d);
             p.job.rolls[used.roll].available = used.length - 1;
             return true;
         }},
        {"a roll of another width",
         [](RightPlan& p, Dice& d) { return p.job.rolls[any_roll(p, d).roll].width += 2, true; }},
        {"a roll used twice",
         [](RightPlan& p, Dice&) { return p.layout.rolls[1].roll = p.layout.rolls[0].roll, true; }},
        {"a flaw under a piece",
         [](RightPlan& p, Dice& d) {
             const UsedRoll& used = any_roll(p, d);
             const Um at = d.roll(1'000, used.length - 100'000);
             p.job.rolls[used.roll].flaws.push_back({at, at + 60'000, std::nullopt, std::nullopt});
             return true;
         }},
        {"directed film from a roll whose arrow is not known",
         [](RightPlan& p, Dice& d) {
             return p.job.rolls[any_roll(p, d).roll].arrow_known = false, true;
         }},
        {"a bound above the new film",
         [](RightPlan& p, Dice&) {
             p.layout.bound.length = p.layout.rolls[0].length + p.layout.rolls[1].length + 1;
             return true;
         }},
        {"a bound under the area",
         [](RightPlan& p, Dice&) { return p.layout.bound.length -= 1, true; }},
        {"a panel of the vehicle without any piece",
         [](RightPlan& p, Dice&) {
             Panel panel = p.job.vehicles[0].panels[0];
             panel.name = "forgotten";
             p.job.vehicles[0].panels.push_back(panel);
             p.job.developed[0].push_back(p.job.developed[0][0]);
             return true;
         }},
        {"a copy too few",
         [](RightPlan& p, Dice& d) { return any(p.job.vehicles[0].panels, d).count += 1, true; }},
        {"a copy too many",
         [](RightPlan& p, Dice& d) {
             Panel& panel = any(p.job.vehicles[0].panels, d);
             panel.count -= 1;
             return true;
         }},
        {"a panel that was to be left out",
         [](RightPlan& p, Dice& d) {
             const PieceId& id = any_piece(p, d).ids.front();
             p.job.left_out.push_back({id.vehicle, id.panel, id.side});
             return true;
         }},
        {"an inlay without a piece",
         [](RightPlan& p, Dice& d) {
             Inlay inlay;
             inlay.name = "grille";
             any(p.job.vehicles[0].panels, d).inlays.push_back(inlay);
             return true;
         }},
        {"a part of two that is alone",
         [](RightPlan& p, Dice& d) { return any_piece(p, d).ids.front().parts = 2, true; }},
        {"the panel's arrow the other way",
         [](RightPlan& p, Dice& d) {
             const PieceId& id = any_piece(p, d).ids.front();
             Panel& panel = p.job.vehicles[0].panels[static_cast<std::size_t>(id.panel)];
             panel.forward = d.roll(0, 1) == 0 ? Heading::left : Heading::up;
             return true;
         }},
        {"a film that may lie freely although the panel says one way",
         [](RightPlan& p, Dice& d) {
             Piece& piece = any_piece(p, d);
             piece.direction = Direction::any;
             return true;
         }},
        {"a piece turned over",
         [](RightPlan& p, Dice& d) {
             Piece& piece = any_piece(p, d);
             for (Ring* ring : {&piece.wrapped.outer, &piece.shapes.front().outline.outer}) {
                 std::vector<GridPoint> over(ring->rbegin(), ring->rend());
                 for (GridPoint& q : over)
                     q.y = -q.y;
                 *ring = over;
             }
             for (UsedRoll& used : p.layout.rolls)
                 for (Placement& placement : used.placements)
                     if (&p.job.pieces[placement.piece] == &piece) {
                         const Box box = box_of(piece.shapes.front().outline.outer);
                         placement.at.y = p.job.film.trim - box.low.y;
                     }
             return true;
         }},
        {"film that stops short of the panel",
         [](RightPlan& p, Dice& d) { return any_piece(p, d).wrapped.outer[1].x -= 5'000, true; }},
        {"a panel measured larger than its film",
         [](RightPlan& p, Dice& d) {
             const PieceId& id = any_piece(p, d).ids.front();
             Blank& blank = p.job.developed[0][static_cast<std::size_t>(id.panel)].blanks.front();
             blank.outline.points[1].x += 0.5;
             return true;
         }},
        {"an outline that runs clockwise",
         [](RightPlan& p, Dice& d) {
             Ring& ring = any_piece(p, d).shapes.front().outline.outer;
             ring = Ring(ring.rbegin(), ring.rend());
             return true;
         }},
        {"an outline that crosses itself",
         [](RightPlan& p, Dice& d) {
             Ring& ring = any_piece(p, d).shapes.front().outline.outer;
             std::swap(ring[1], ring[2]);
             return true;
         }},
    };
    return list;
}

const std::vector<Mutation>& mutations_of_straight() {
    static const std::vector<Mutation> list{
        {"a cut that is not made",
         [](RightPlan& p, Dice& d) {
             UsedRoll& used = any_roll(p, d);
             // The last crosscut may be left to the roll's end; any slit is needed.
             const std::int64_t piece =
                 d.roll(0, static_cast<std::int64_t>(used.placements.size()) - 1);
             used.cuts.erase(used.cuts.begin() + 3 * piece + d.roll(1, 2));
             return true;
         }},
        {"a slit moved by a step of the ruler",
         [](RightPlan& p, Dice& d) {
             UsedRoll& used = any_roll(p, d);
             Cut& cut = used.cuts[static_cast<std::size_t>(
                 3 * d.roll(0, static_cast<std::int64_t>(used.placements.size()) - 1) + 2)];
             cut.from.y += 1'000;
             cut.to.y += 1'000;
             return true;
         }},
        {"a cut off the ruler's steps",
         [](RightPlan& p, Dice& d) { return any(any_roll(p, d).cuts, d).from.y += 1, true; }},
        {"a cut that stops short",
         [](RightPlan& p, Dice& d) {
             Cut& cut = any(any_roll(p, d).cuts, d);
             (cut.from.x == cut.to.x ? cut.to.y : cut.to.x) -= 1'000;
             return true;
         }},
        {"slits before the crosscut",
         [](RightPlan& p, Dice& d) {
             UsedRoll& used = any_roll(p, d);
             std::swap(used.cuts[0], used.cuts[1]);
             return true;
         }},
        {"numbers that are not the order of coming free",
         [](RightPlan& p, Dice& d) {
             UsedRoll& used = any_roll(p, d);
             if (used.placements.size() < 2)
                 return false;
             std::swap(used.placements.front(), used.placements.back());
             return true;
         }},
        {"pieces that come off the roll before those that are laid earlier",
         [](RightPlan& p, Dice& d) {
             const UsedRoll& used = any_roll(p, d);
             if (used.placements.size() < 2)
                 return false;
             const Placement& a = used.placements.front();
             const Placement& b = used.placements.back();
             std::swap(p.job.laying[a.piece][a.copy], p.job.laying[b.piece][b.copy]);
             return true;
         }},
        {"a piece without a place in the order of laying",
         [](RightPlan& p, Dice& d) { return any(p.job.laying, d).pop_back(), true; }},
        {"two pieces with one place in the order of laying",
         [](RightPlan& p, Dice& d) {
             const UsedRoll& used = any_roll(p, d);
             if (used.placements.size() < 2)
                 return false;
             const Placement& a = used.placements.front();
             const Placement& b = used.placements.back();
             p.job.laying[a.piece][a.copy] = p.job.laying[b.piece][b.copy];
             return true;
         }},
        {"more turns of the film than the job allows",
         [](RightPlan& p, Dice&) { return p.job.stages = 0, true; }},
        {"a strip longer than the table",
         [](RightPlan& p, Dice& d) {
             const UsedRoll& used = any_roll(p, d);
             const Placement& placement = used.placements.front();
             const Box box =
                 box_of(p.job.pieces[placement.piece].shapes[placement.shape].outline.outer);
             p.job.table = std::min(box.along(), box.across()) - 1;
             return true;
         }},
        {"a margin under the one that is wanted",
         [](RightPlan& p, Dice&) { return p.job.film.allowances.handling.want = 20'001, true; }},
        {"a rectangle off the ruler's steps",
         [](RightPlan& p, Dice&) { return p.job.film.allowances.ruler = 3'175, true; }},
    };
    return list;
}

const std::vector<Mutation>& mutations_of_contour() {
    static const std::vector<Mutation> list{
        {"a gap that is a micrometer wider than what was left",
         [](RightPlan& p, Dice&) {
             if (p.layout.rolls[0].placements.size() < 2)
                 return false;
             p.job.film.allowances.gap += 1;
             return true;
         }},
        {"straight cuts in contour cutting",
         [](RightPlan& p, Dice& d) {
             any_roll(p, d).cuts.push_back({{1'000, 0}, {1'000, p.job.film.width}});
             return true;
         }},
        {"a blank cut smaller than what stays on",
         [](RightPlan& p, Dice& d) {
             return any_piece(p, d).shapes.front().outline.outer[4].y -= 30'000, true;
         }},
        {"a hole that is not inside its piece",
         [](RightPlan& p, Dice& d) {
             Polygon& outline = any_piece(p, d).shapes.front().outline;
             const Box box = box_of(outline.outer);
             outline.holes.push_back({{box.high.x - 1'000, box.low.y + 50'000},
                                      {box.high.x - 1'000, box.low.y + 60'000},
                                      {box.high.x + 1'000, box.low.y + 60'000},
                                      {box.high.x + 1'000, box.low.y + 50'000}});
             return true;
         }},
    };
    return list;
}

void check_all(const std::vector<Mutation>& mutations, RightPlan (*make)(Dice&)) {
    const auto seeds = static_cast<std::uint64_t>(test::asked_jobs("PELT_SPOILED_LAYOUTS", 60));
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        Dice dice(seed);
        const RightPlan right = make(dice);
        CAPTURE(seed);
        REQUIRE(passes(right));
        for (const Mutation& mutation : mutations) {
            RightPlan wrong = right;
            if (!mutation.apply(wrong, dice))
                continue;
            CAPTURE(mutation.name);
            CHECK_FALSE(passes(wrong));
        }
    }
}

} // namespace

TEST_CASE("every mutant of a right straight plan is caught") {
    check_all(mutations_of_both(), test::straight_plan);
    check_all(mutations_of_straight(), test::straight_plan);
}

TEST_CASE("every mutant of a right contour plan is caught") {
    check_all(mutations_of_both(), test::contour_plan);
    check_all(mutations_of_contour(), test::contour_plan);
}
