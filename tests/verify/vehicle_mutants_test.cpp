// SPDX-License-Identifier: MIT
// A right plan of a vehicle that has something of everything passes; with one thing made wrong
// anywhere between the vehicle and the roll it never does.
#include "verify/made_plans.hpp"
#include "verify/verify.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::test;

namespace {

std::vector<std::string> faults_of(const RightPlan& plan) {
    return verify::verify(std::make_shared<const Job>(plan.job), plan.layout).faults;
}

struct Mutant {
    std::string name;
    std::function<void(RightPlan&)> spoil;
};

void move_ring(Ring& ring, Um x, Um y) {
    for (GridPoint& p : ring)
        p = {p.x + x, p.y + y};
}

EdgeRule& rule(RightPlan& plan, const std::string& panel, const std::string& word) {
    for (EdgeRule& found : panel_of(plan, panel).edges)
        if (found.word == word)
            return found;
    throw std::runtime_error("no rule for " + word);
}

Opening& opening(RightPlan& plan, const std::string& name) {
    for (Opening& found : panel_of(plan, "lid").openings)
        if (found.name == name)
            return found;
    throw std::runtime_error("no opening " + name);
}

/// The hole of the lid's film nearest to a point of its drawing, forward up.
Ring& hole_at(std::vector<Ring>& holes, Um x, Um y) {
    const auto away = [&](const Ring& hole) {
        const Box box = box_of(hole);
        const Um dx = (box.low.x + box.high.x) / 2 - y;
        const Um dy = (box.low.y + box.high.y) / 2 + x;
        return dx * dx + dy * dy;
    };
    return *std::min_element(holes.begin(), holes.end(),
                             [&](const Ring& a, const Ring& b) { return away(a) < away(b); });
}

Polygon& lid(RightPlan& plan) {
    return piece_of(plan, {"lid"}).wrapped;
}

/// The side of a ring at whose middle it is farthest that way.
std::size_t farthest_side(const Ring& ring, Um x, Um y) {
    std::size_t best = 0;
    Um most = std::numeric_limits<Um>::min();
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint a = ring[i];
        const GridPoint b = ring[(i + 1) % ring.size()];
        const Um far = (a.x + b.x) * x + (a.y + b.y) * y;
        if (far > most) {
            most = far;
            best = i;
        }
    }
    return best;
}

/// Cuts a notch that deep and as wide into the middle of that side, from outside.
void notch(Ring& ring, std::size_t side, GridPoint inward) {
    const GridPoint a = ring[side];
    const GridPoint b = ring[(side + 1) % ring.size()];
    const GridPoint middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
    const GridPoint tip{middle.x + inward.x, middle.y + inward.y};
    const GridPoint before{middle.x - (inward.y < 0 ? -inward.y : inward.y),
                           middle.y - (inward.x < 0 ? -inward.x : inward.x)};
    const GridPoint after{2 * middle.x - before.x, 2 * middle.y - before.y};
    const bool along = (b.x - a.x) * (after.x - before.x) + (b.y - a.y) * (after.y - before.y) > 0;
    ring.insert(ring.begin() + static_cast<std::ptrdiff_t>(side) + 1,
                {along ? before : after, tip, along ? after : before});
}

Piece& wall(RightPlan& plan, Side side, int part) {
    return piece_of(plan, {"wall", side, part});
}

/// Film that stays on of both walls alike, as a mistake in `piece` would make it.
void both_walls(RightPlan& plan, int part, const std::function<void(Ring&, Um)>& change) {
    change(wall(plan, Side::left, part).wrapped.outer, 1);
    change(wall(plan, Side::right, part).wrapped.outer, -1);
}

// A right piece is its left twin with y negated, in the same order of points seen from its low
// corner on, so what is done to one is done to the other by its own extent.
void grow_low_x(Ring& ring, Um by) {
    const Box box = box_of(ring);
    for (GridPoint& p : ring)
        if (p.x < box.low.x + 150'000)
            p.x -= by;
}
void grow_high_x(Ring& ring, Um by) {
    const Box box = box_of(ring);
    for (GridPoint& p : ring)
        if (p.x > box.high.x - 150'000)
            p.x += by;
}

void as_stock(RightPlan& plan, const std::string& batch) {
    Roll& roll = plan.job.rolls.front();
    roll.is_new = false;
    roll.batch = batch;
}

const std::vector<Mutant>& of_film() {
    static const std::vector<Mutant> list{
        {"film that ends shorter than the stop",
         [](RightPlan& p) { rule(p, "lid", "top").stop = 4'900; }},
        {"film that runs into the stop", [](RightPlan& p) { rule(p, "lid", "top").stop = 5'100; }},
        {"film that runs into the stop along an arc",
         [](RightPlan& p) { rule(p, "lid", "round").stop = 3'100; }},
        {"a stop where a tuck was asked for",
         [](RightPlan& p) {
             rule(p, "quarter", "bottom").wrap.reset();
             rule(p, "quarter", "bottom").stop = 1'000;
         }},
        {"a tuck where a stop was asked for",
         [](RightPlan& p) {
             rule(p, "quarter", "top").stop.reset();
             rule(p, "quarter", "top").wrap = 5'000;
         }},
        {"a tuck that is too short",
         [](RightPlan& p) { rule(p, "quarter", "bottom").wrap = 30'100; }},
        {"a tuck that is too long",
         [](RightPlan& p) { rule(p, "quarter", "bottom").wrap = 29'900; }},
        {"a tuck missing between two corners",
         [](RightPlan& p) {
             Ring& ring = lid(p).outer;
             notch(ring, farthest_side(ring, -1, 0), {10'000, 0});
         }},
        {"a tuck missing at an arc",
         [](RightPlan& p) {
             Ring& ring = piece_of(p, {"quarter", Side::left}).wrapped.outer;
             ring.erase(ring.begin() + static_cast<std::ptrdiff_t>(farthest_side(ring, 0, -1)));
         }},
        {"the usual tuck of the film", [](RightPlan& p) { p.job.film.allowances.wrap = 11'900; }},
        {"a tuck of the panel's own",
         [](RightPlan& p) { panel_of(p, "wall").allowances.wrap = 5'000; }},
        {"a tuck where none was asked for",
         [](RightPlan& p) { panel_of(p, "wall").edges_none = true; }},
        {"film tucked round a part that stays on",
         [](RightPlan& p) { p.job.left_on = {"badges"}; }},
        {"too much film under a part that stays on",
         [](RightPlan& p) { p.job.film.allowances.flush = 1'900; }},
        {"film over a part that stays on",
         [](RightPlan& p) {
             p.job.left_on = {"badges", "rubbers", "caps"};
         }},
        {"film cut out where the part comes off",
         [](RightPlan& p) { p.job.left_on = {"rubbers"}; }},
        {"an opening that was not cut out",
         [](RightPlan& p) {
             std::vector<Ring>& holes = lid(p).holes;
             holes.erase(holes.begin() + (&hole_at(holes, 100'000, 175'000) - holes.data()));
         }},
        {"what must stay clear is covered",
         [](RightPlan& p) {
             std::vector<Ring>& holes = lid(p).holes;
             holes.erase(holes.begin() + (&hole_at(holes, 90'000, 80'000) - holes.data()));
         }},
        {"what must stay clear is covered a little",
         [](RightPlan& p) { hole_at(lid(p).holes, 90'000, 80'000)[0].x += 100; }},
        {"a covered opening cut out",
         [](RightPlan& p) {
             lid(p).holes.push_back({{70'000, -340'000},
                                     {100'000, -340'000},
                                     {100'000, -370'000},
                                     {70'000, -370'000}});
         }},
        {"film too far into an opening", [](RightPlan& p) { opening(p, "vent").wrap = 5'900; }},
        {"film not far enough into an opening",
         [](RightPlan& p) { opening(p, "vent").wrap = 6'100; }},
        {"an opening in another place",
         [](RightPlan& p) { move_ring(hole_at(lid(p).holes, 100'000, 175'000), 100, 0); }},
        {"a recess that is not trimmed along its size",
         [](RightPlan& p) { move_ring(hole_at(lid(p).holes, 590'000, 170'000), 0, 100); }},
        {"a recess that is covered",
         [](RightPlan& p) {
             std::vector<Ring>& holes = lid(p).holes;
             holes.erase(holes.begin() + (&hole_at(holes, 590'000, 170'000) - holes.data()));
         }},
        {"an inlay without its overlap",
         [](RightPlan& p) { panel_of(p, "lid").inlays.front().overlap = 8'100; }},
        {"an inlay of another size",
         [](RightPlan& p) { developed_of(p, "lid").blanks.front().inlays.front().high.x += 0.1; }},
        {"an inlay that lies across",
         [](RightPlan& p) {
             Ring& ring = piece_of(p, {"lid", Side::centre, 1, "grille"}).wrapped.outer;
             for (GridPoint& q : ring)
                 q = {-q.y, q.x};
         }},
        {"a panel measured a little larger",
         [](RightPlan& p) { developed_of(p, "wing").blanks.front().outline.points[1].x += 0.2; }},
        {"a left panel's film on the right side",
         [](RightPlan& p) {
             std::swap(piece_of(p, {"quarter", Side::left}).wrapped,
                       piece_of(p, {"quarter", Side::right}).wrapped);
         }},
        {"two outer faces",
         [](RightPlan& p) {
             piece_of(p, {"wing", Side::left, 1, "", 2}).wrapped =
                 piece_of(p, {"wing", Side::left}).wrapped;
         }},
        {"faces numbered the other way",
         [](RightPlan& p) {
             std::swap(piece_of(p, {"wing", Side::left, 1, "", 2}).ids,
                       piece_of(p, {"wing", Side::left}).ids);
         }},
        {"left and right that differ a little",
         [](RightPlan& p) {
             piece_of(p, {"quarter", Side::right}).wrapped.outer[0].x -= 1;
         }},
        {"the parts of a left panel on the right side",
         [](RightPlan& p) {
             for (const int part : {1, 2})
                 std::swap(wall(p, Side::left, part).wrapped, wall(p, Side::right, part).wrapped);
         }},
        {"a part that is not its twin's mirror image",
         [](RightPlan& p) { wall(p, Side::right, 2).wrapped = wall(p, Side::left, 2).wrapped; }},
        {"two parts that change their numbers",
         [](RightPlan& p) {
             for (const Side side : {Side::left, Side::right})
                 std::swap(wall(p, side, 1).ids, wall(p, side, 2).ids);
         }},
    };
    return list;
}

const std::vector<Mutant>& of_seams() {
    static const std::vector<Mutant> list{
        {"a lap that is too narrow",
         [](RightPlan& p) { panel_of(p, "wall").allowances.overlap = 14'100; }},
        {"a lap that is too wide",
         [](RightPlan& p) { panel_of(p, "wall").allowances.overlap = 13'900; }},
        {"an added seam's lap that is too narrow",
         [](RightPlan& p) { p.job.film.allowances.overlap = 10'100; }},
        {"an added seam's lap that is too wide",
         [](RightPlan& p) { p.job.film.allowances.overlap = 9'900; }},
        {"the upper part ends short of the seam line",
         [](RightPlan& p) {
             for (const Seam& seam : std::vector<Seam>(p.job.seams))
                 if (seam.panel == 3 && seam.side == Side::left)
                     both_walls(p, seam.upper_part, [](Ring& ring, Um) { grow_low_x(ring, -200); });
         }},
        {"the upper part runs past the seam line",
         [](RightPlan& p) {
             for (const Seam& seam : std::vector<Seam>(p.job.seams))
                 if (seam.panel == 3 && seam.side == Side::left)
                     both_walls(p, seam.upper_part, [](Ring& ring, Um) { grow_low_x(ring, 200); });
         }},
        {"the under part does not reach its lap",
         [](RightPlan& p) {
             for (const Seam& seam : std::vector<Seam>(p.job.seams))
                 if (seam.panel == 3 && seam.side == Side::left)
                     both_walls(p, seam.under_part,
                                [](Ring& ring, Um) { grow_high_x(ring, -200); });
         }},
        {"parts that do not meet",
         [](RightPlan& p) {
             for (const Seam& seam : std::vector<Seam>(p.job.seams))
                 if (seam.panel == 3 && seam.side == Side::left)
                     both_walls(p, seam.under_part,
                                [](Ring& ring, Um) { grow_high_x(ring, -20'000); });
         }},
        {"the under part is said to lie on top",
         [](RightPlan& p) {
             for (Seam& seam : p.job.seams)
                 if (seam.panel == 3)
                     std::swap(seam.upper_part, seam.under_part);
         }},
        {"the under part of an added seam is said to lie on top",
         [](RightPlan& p) {
             for (Seam& seam : p.job.seams)
                 if (seam.panel == 4)
                     std::swap(seam.upper_part, seam.under_part);
         }},
        {"a wall of the front, where the left piece lies on top",
         [](RightPlan& p) { panel_of(p, "wall").lies = LiesOn::front; }},
        {"pieces numbered from above",
         [](RightPlan& p) {
             for (const Side side : {Side::left, Side::right})
                 std::swap(wall(p, side, 1).ids, wall(p, side, 2).ids);
             for (Seam& seam : p.job.seams)
                 if (seam.panel == 3)
                     std::swap(seam.upper_part, seam.under_part);
         }},
        {"a piece that is on the vehicle already, and is cut",
         [](RightPlan& p) { p.job.not_cut.push_back(wall(p, Side::left, 1)); }},
        {"a seam that is not told of", [](RightPlan& p) { p.job.seams.pop_back(); }},
        {"a seam told of where there is none",
         [](RightPlan& p) {
             Seam seam = p.job.seams.front();
             seam.panel = 0;
             seam.side = Side::centre;
             p.job.seams.push_back(seam);
         }},
        {"a seam told with another lap",
         [](RightPlan& p) { p.job.seams.front().overlap += 1'000; }},
        {"an added seam told as one of the file",
         [](RightPlan& p) {
             for (Seam& seam : p.job.seams)
                 seam.added = false;
         }},
        {"a seam of the file told as added",
         [](RightPlan& p) {
             for (Seam& seam : p.job.seams)
                 seam.added = true;
         }},
        {"a seam where the panel forbids it",
         [](RightPlan& p) { panel_of(p, "ceiling").seam = SeamRule::never; }},
        {"a seam beside the lines that the panel allows",
         [](RightPlan& p) { panel_of(p, "ceiling").seam = SeamRule::at_lines; }},
        {"a seam line in another place",
         [](RightPlan& p) {
             for (Point& q : developed_of(p, "wall").blanks.front().seam_lines.front().points)
                 q.x += 0.2;
         }},
        {"a seam line that is always used left out",
         [](RightPlan& p) {
             developed_of(p, "quarter")
                 .blanks.front()
                 .seam_lines.push_back({{{400, 0}, {400, 300}}, true});
         }},
        {"parts of one seam cut as if it bent the other way",
         [](RightPlan& p) {
             for (Point& q : developed_of(p, "wall").blanks.front().seam_lines.front().points)
                 q.x = 1'000 - q.x;
         }},
    };
    return list;
}

const std::vector<Mutant>& of_rolls() {
    static const std::vector<Mutant> list{
        {"a piece from another batch",
         [](RightPlan& p) {
             as_stock(p, "B2");
             Roll fresh = p.job.rolls.front();
             fresh.is_new = true;
             p.job.rolls.push_back(fresh);
             UsedRoll& used = p.layout.rolls.front();
             UsedRoll other{p.job.rolls.size() - 1, 0, {used.placements.back()}, {}};
             used.placements.pop_back();
             p.layout.rolls.push_back(other);
         }},
        {"a piece turned as its shape does not allow",
         [](RightPlan& p) {
             const Placement& flap = placement_of(p, {"flap"});
             CutShape& shape = p.job.pieces[flap.piece].shapes[flap.shape];
             std::erase(shape.turns, flap.turn);
             shape.turns.push_back({(flap.turn.millidegrees + 90'000) % 360'000});
         }},
        {"a shape that may be turned as its film may not",
         [](RightPlan& p) {
             for (Piece& piece : p.job.pieces)
                 for (CutShape& shape : piece.shapes)
                     if (piece.direction == Direction::one_way)
                         shape.turns = {no_turn, half_turn};
         }},
        {"a piece said to come from any batch",
         [](RightPlan& p) { piece_of(p, {"lid"}).batch_free = true; }},
        {"a piece of two panels", [](RightPlan& p) { piece_of(p, {"lid"}).ids.front().panel = 5; }},
        {"a coordinate out of all bounds",
         [](RightPlan& p) { piece_of(p, {"lid"}).wrapped.outer[0].x = Um{1} << 62; }},
        {"a hole out of all bounds",
         [](RightPlan& p) { lid(p).holes.front()[0].y = -(Um{1} << 62); }},
        {"a place out of all bounds",
         [](RightPlan& p) { placement_of(p, {"lid"}).at.x = Um{1} << 61; }},
        {"a roll out of all bounds", [](RightPlan& p) { p.job.rolls.front().width = Um{1} << 62; }},
        {"a ruler without steps", [](RightPlan& p) { p.job.film.allowances.ruler = 0; }},
        {"a spacing out of all bounds",
         [](RightPlan& p) { p.job.film.allowances.gap = Um{1} << 62; }},
        {"a panel measured as not a number",
         [](RightPlan& p) {
             developed_of(p, "lid").blanks.front().outline.points[0].x = std::nan("");
         }},
        {"a panel that was not developed",
         [](RightPlan& p) { developed_of(p, "lid").blanks.clear(); }},
        {"a piece without points", [](RightPlan& p) { lid(p).outer.clear(); }},
        {"an edge that the panel does not have",
         [](RightPlan& p) { developed_of(p, "lid").blanks.front().outline.edge[0] = 99; }},
        {"an opening lost when the panel was developed",
         [](RightPlan& p) { developed_of(p, "lid").blanks.front().openings.pop_back(); }},
        {"a recess lost when the panel was developed",
         [](RightPlan& p) { developed_of(p, "lid").blanks.front().inlays.clear(); }},
        {"a turn that is none",
         [](RightPlan& p) { placement_of(p, {"flap"}).turn = Turn{-90'000}; }},
        {"two holes that overlap",
         [](RightPlan& p) {
             Ring hole = hole_at(lid(p).holes, 100'000, 175'000);
             move_ring(hole, 10'000, 10'000);
             lid(p).holes.push_back(hole);
         }},
    };
    return list;
}

const std::vector<Mutant>& of_straight() {
    static const std::vector<Mutant> list{
        {"a margin that is not wanted so wide",
         [](RightPlan& p) { p.job.film.allowances.handling.want = 38'000; }},
        {"a margin under the one wanted where there is room",
         [](RightPlan& p) { p.job.film.allowances.handling.want = 42'000; }},
        {"a rectangle beside its film", [](RightPlan& p) { move_ring(lid(p).outer, 0, 10'000); }},
    };
    return list;
}

const std::vector<Mutant>& of_contour() {
    static const std::vector<Mutant> list{
        {"too little to grip", [](RightPlan& p) { p.job.film.allowances.bleed = 10'200; }},
        {"too much to grip", [](RightPlan& p) { p.job.film.allowances.bleed = 9'700; }},
        {"a panel's own bleed",
         [](RightPlan& p) { panel_of(p, "quarter").allowances.bleed = 5'000; }},
        {"a hole cut at the table that is to be cut on the vehicle",
         [](RightPlan& p) { opening(p, "pipe").cut = OpeningCut::on_vehicle; }},
        {"a hole cut on the vehicle that is to be cut at the table",
         [](RightPlan& p) { opening(p, "vent").cut = OpeningCut::at_table; }},
        {"a hole cut at the table through wanted film",
         [](RightPlan& p) {
             move_ring(piece_of(p, {"lid"}).shapes.front().outline.holes.front(), 60'000, 0);
         }},
        {"a hole cut at the table that leaves nothing to grip",
         [](RightPlan& p) {
             move_ring(piece_of(p, {"lid"}).shapes.front().outline.holes.front(), 5'000, 0);
         }},
        {"a second hole at the table",
         [](RightPlan& p) {
             std::vector<Ring>& holes = piece_of(p, {"lid"}).shapes.front().outline.holes;
             Ring hole = holes.front();
             move_ring(hole, 120'000, 0);
             holes.push_back(hole);
         }},
        {"a cut outline with a notch",
         [](RightPlan& p) {
             Ring& ring = piece_of(p, {"quarter", Side::left}).shapes.front().outline.outer;
             notch(ring, farthest_side(ring, 0, 1), {0, -8'000});
         }},
        {"a cut outline that is its twin's",
         [](RightPlan& p) {
             std::swap(piece_of(p, {"quarter", Side::left}).shapes,
                       piece_of(p, {"quarter", Side::right}).shapes);
         }},
        {"bleed on a seam edge",
         [](RightPlan& p) {
             for (const Side side : {Side::left, Side::right})
                 for (const int part : {1, 2}) {
                     Ring& ring = wall(p, side, part).shapes.front().outline.outer;
                     part == 1 ? grow_low_x(ring, 10'000) : grow_high_x(ring, 10'000);
                 }
         }},
    };
    return list;
}

void check(CutBy by, const std::vector<const std::vector<Mutant>*>& lists) {
    const RightPlan right = plan_of_everything(by);
    REQUIRE(faults_of(right) == std::vector<std::string>{});
    for (const auto* list : lists)
        for (const Mutant& mutant : *list) {
            RightPlan wrong = right;
            mutant.spoil(wrong);
            CAPTURE(mutant.name);
            CHECK_FALSE(faults_of(wrong).empty());
        }
}

} // namespace

TEST_CASE("whatever is wrong between the vehicle and the roll is found: straight") {
    check(CutBy::straight, {&of_film(), &of_seams(), &of_rolls(), &of_straight()});
}

TEST_CASE("whatever is wrong between the vehicle and the roll is found: contour") {
    check(CutBy::contour, {&of_film(), &of_seams(), &of_rolls(), &of_contour()});
}
