// SPDX-License-Identifier: MIT
// One thing made wrong in a right plan of everything, and the sentence that is for it: others may
// be told as well, but the one that is meant must be.
#include "verify/made_plans.hpp"
#include "verify/told.hpp"

#include <doctest/doctest.h>

#include <functional>
#include <string>
#include <utility>
#include <vector>

using namespace pelt;
using namespace pelt::test;

namespace {

struct Wrong {
    std::string sentence;
    std::function<void(RightPlan&)> make;
};

Seam& seam_of(RightPlan& plan, const std::string& panel) {
    const Panel* const wanted = &panel_of(plan, panel);
    for (Seam& seam : plan.job.seams)
        if (&plan.job.vehicles.front().panels[static_cast<std::size_t>(seam.panel)] == wanted)
            return seam;
    throw std::runtime_error("no seam of " + panel);
}

Piece& grille(RightPlan& plan) {
    return piece_of(plan, {"lid", Side::centre, 1, "grille"});
}

void turn_over(Ring& ring) {
    ring = Ring(ring.rbegin(), ring.rend());
}

const std::vector<Wrong>& of_seams() {
    static const std::vector<Wrong> list{
        {"divided although it may not be",
         [](RightPlan& p) { panel_of(p, "wall").seam = SeamRule::never; }},
        {"the piece with the lower number is not under",
         [](RightPlan& p) {
             std::swap(seam_of(p, "wall").upper_part, seam_of(p, "wall").under_part);
         }},
        {"a seam is told wrongly", [](RightPlan& p) { seam_of(p, "wall").overlap += 1; }},
        {"a seam is told wrongly", [](RightPlan& p) { seam_of(p, "wall").under_part = 3; }},
        {"a seam is added where none may be",
         [](RightPlan& p) { panel_of(p, "ceiling").seam = SeamRule::at_lines; }},
        {"not divided at a seam line that is always used",
         [](RightPlan& p) {
             developed_of(p, "quarter")
                 .blanks.front()
                 .seam_lines.push_back({{{400, 0}, {400, 300}}, true});
             panel_of(p, "quarter").seam_lines.emplace_back();
         }},
        {"a seam is told of that is not there",
         [](RightPlan& p) {
             p.job.seams.push_back(seam_of(p, "ceiling"));
             p.job.seams.back().under_part = 1;
             p.job.seams.back().upper_part = 2;
             p.job.seams.push_back(p.job.seams.back());
             p.job.seams.back().added = false;
         }},
        {"of its drawing as no seam tells",
         [](RightPlan& p) {
             for (Point& q : developed_of(p, "wall").blanks.front().seam_lines.front().points)
                 q.x += 0.2;
         }},
        {"of its drawing as no seam tells",
         [](RightPlan& p) {
             panel_of(p, "wall").allowances.overlap = 14'200;
             for (Seam& seam : p.job.seams)
                 seam.overlap += seam.panel == 3 ? 200 : 0;
         }},
        {"of its drawing as no seam tells",
         [](RightPlan& p) { panel_of(p, "wall").lies = LiesOn::front; }},
        {"of its drawing as no seam tells",
         [](RightPlan& p) { p.job.film.allowances.overlap += 200; }},
        {"of its drawing as no seam tells",
         [](RightPlan& p) { p.job.film.allowances.overlap -= 200; }},
        {"seams are told of a panel or side that has none",
         [](RightPlan& p) {
             for (std::size_t i = 0; i < p.job.seams.size(); ++i)
                 if (p.job.seams[i].side == Side::right)
                     p.job.seams[i].length += 1;
         }},
        {"a divided panel has no seam told",
         [](RightPlan& p) {
             std::erase_if(p.job.seams, [](const Seam& seam) { return seam.side != Side::centre; });
         }},
    };
    return list;
}

const std::vector<Wrong>& of_pieces() {
    static const std::vector<Wrong> list{
        {"cut, and not cut", [](RightPlan& p) { p.job.not_cut.push_back(piece_of(p, {"lid"})); }},
        {"not the same film as on the other side",
         [](RightPlan& p) {
             piece_of(p, {"quarter", Side::right}).wrapped.outer[0].x -= 1;
         }},
        {"its direction is not its panel's",
         [](RightPlan& p) { piece_of(p, {"lid"}).direction = Direction::any; }},
        {"it may not come from any batch, or may",
         [](RightPlan& p) { piece_of(p, {"lid"}).batch_free = true; }},
        {"not its recess with the overlap all round",
         [](RightPlan& p) {
             const Box box = box_of(grille(p).wrapped.outer);
             for (GridPoint& q : grille(p).wrapped.outer)
                 q.x += q.x == box.high.x ? 100 : 0;
         }},
        {"not its recess with the overlap all round",
         [](RightPlan& p) {
             const Box box = box_of(grille(p).wrapped.outer);
             for (GridPoint& q : grille(p).wrapped.outer)
                 q.x -= q.x == box.low.x ? 100 : 0;
         }},
        {"its outline is not a simple counter-clockwise ring",
         [](RightPlan& p) { turn_over(piece_of(p, {"lid"}).wrapped.outer); }},
        {"its outline is not a simple counter-clockwise ring",
         [](RightPlan& p) { turn_over(piece_of(p, {"flap"}).shapes.front().outline.outer); }},
        {"its outline is not a simple counter-clockwise ring",
         [](RightPlan& p) {
             Ring& ring = piece_of(p, {"flap"}).wrapped.outer;
             std::swap(ring[0], ring[1]);
         }},
        {"turned as its film may not lie",
         [](RightPlan& p) { piece_of(p, {"lid"}).shapes.front().turns = {half_turn}; }},
        {"it may not lie in any way",
         [](RightPlan& p) { piece_of(p, {"lid"}).shapes.front().turns.clear(); }},
        {"the panel 'lid' was not measured",
         [](RightPlan& p) { panel_of(p, "lid").guessed = true; }},
    };
    return list;
}

const std::vector<Wrong>& of_contour() {
    static const std::vector<Wrong> list{
        {"not its film with the bleed all round",
         [](RightPlan& p) {
             Ring& ring = grille(p).shapes.front().outline.outer;
             const Box box = box_of(ring);
             for (GridPoint& q : ring)
                 q.y += q.y == box.high.y ? 100 : 0;
         }},
        {"has a hole cut at the table that is not asked for",
         [](RightPlan& p) {
             for (Opening& opening : panel_of(p, "lid").openings)
                 opening.cut = OpeningCut::on_vehicle;
         }},
        {"has a hole cut at the table too near what stays on the vehicle",
         [](RightPlan& p) {
             for (GridPoint& q : piece_of(p, {"lid"}).shapes.front().outline.holes.front())
                 q.x += 1'000;
         }},
    };
    return list;
}

const std::vector<Wrong>& of_straight() {
    static const std::vector<Wrong> list{
        {"not the margins to grip that are wanted",
         [](RightPlan& p) {
             for (GridPoint& q : piece_of(p, {"lid"}).shapes.front().outline.outer)
                 q.y += 2;
         }},
        {"not an upright rectangle",
         [](RightPlan& p) {
             Ring& ring = piece_of(p, {"lid"}).shapes.front().outline.outer;
             ring.push_back(
                 {(ring.front().x + ring.back().x) / 2, (ring.front().y + ring.back().y) / 2});
         }},
    };
    return list;
}

const std::vector<Wrong>& of_places() {
    static const std::vector<Wrong> list{
        {": outside the usable film",
         [](RightPlan& p) {
             for (Placement& lies : p.layout.rolls.front().placements)
                 lies.at.x -= 1;
         }},
        {": its length does not end with its last piece",
         [](RightPlan& p) { p.layout.rolls.front().length += 1; }},
        {": its length does not end with its last piece",
         [](RightPlan& p) { p.layout.rolls.front().length -= 1; }},
        {": more film is used than there is",
         [](RightPlan& p) { p.job.rolls.front().available = p.layout.rolls.front().length - 1; }},
        {": directed film from a roll whose arrow is not known",
         [](RightPlan& p) { p.job.rolls.front().arrow_known = false; }},
        {"the bound is longer than the new film",
         [](RightPlan& p) { p.layout.bound.length = p.layout.rolls.front().length + 1; }},
        {"the bound is under the pieces' area over the usable width",
         [](RightPlan& p) { p.layout.bound.length = 1; }},
        {": used twice over",
         [](RightPlan& p) { p.layout.rolls.push_back(p.layout.rolls.front()); }},
        {"a piece lies or is turned out of all bounds",
         [](RightPlan& p) { placement_of(p, {"flap"}).turn = Turn{360'000}; }},
        {"a roll's length is out of all bounds",
         [](RightPlan& p) { p.layout.rolls.front().length = Um{1} << 60; }},
        {"the bound is out of all bounds",
         [](RightPlan& p) { p.layout.bound.length = Um{1} << 60; }},
        {"the film's width, ruler or allowances are out of all bounds",
         [](RightPlan& p) { p.job.film.allowances.bleed = -1; }},
        {"its tucks, stops or allowances are out of all bounds",
         [](RightPlan& p) { panel_of(p, "wall").allowances.overlap = -1; }},
        {"not every piece has a place of its own in the order of laying",
         [](RightPlan& p) {
             p.job.in_order = true;
             p.job.laying.assign(p.job.pieces.size(), {});
             for (std::size_t i = 0; i < p.job.pieces.size(); ++i)
                 p.job.laying[i].assign(p.job.pieces[i].ids.size(), 0);
         }},
        {"it was not developed as one blank",
         [](RightPlan& p) {
             TaggedRing& ring = developed_of(p, "lid").blanks.front().outline;
             ring.ways.assign(ring.points.size(), {});
             const double x = ring.points[0].x - ring.points[1].x;
             ring.ways[0].begins = {x < 0 ? -1.0 : 1.0, 0}; // back from where the side goes
         }},
    };
    return list;
}

void check(CutBy by, const std::vector<const std::vector<Wrong>*>& lists) {
    const RightPlan right = plan_of_everything(by);
    REQUIRE(faults_of(right) == Told{});
    for (const auto* list : lists)
        for (const Wrong& wrong : *list) {
            RightPlan plan = right;
            wrong.make(plan);
            const Told told = faults_of(plan);
            CAPTURE(wrong.sentence);
            CAPTURE(told);
            CHECK(says(told, wrong.sentence));
        }
}

} // namespace

TEST_CASE("what is wrong is told by its own sentence: straight") {
    check(CutBy::straight, {&of_seams(), &of_pieces(), &of_straight(), &of_places()});
}

TEST_CASE("what is wrong is told by its own sentence: contour") {
    check(CutBy::contour, {&of_seams(), &of_pieces(), &of_contour(), &of_places()});
}
