// SPDX-License-Identifier: MIT
// Measuring error: pieces are cut so much larger that a panel whose readings were all off by the
// tolerance is covered all the same.
#include "cutting.hpp"
#include "geos_referee.hpp"
#include "random_figures.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace pelt;
using namespace pelt::test;

namespace {

constexpr Um tolerance = 5 * um_per_mm;

Cutting cut_within(const Panel& panel, const Film& film, Um reading, CutBy by) {
    piece::Wishes wishes;
    wishes.by = by;
    return cut(piece::allowing_for_errors(panel, film, wishes, reading), film, wishes);
}

Film film_with_margins() {
    Film out = film();
    out.allowances.handling = {20'000, 15'000};
    out.allowances.bleed = 10'000;
    return out;
}

Panel bare(OutlineForm form) {
    Panel out = panel(std::move(form));
    out.edges_none = true;
    out.forward = Heading::right;
    return out;
}

/// The sides of the piece as cut.
Point sides(const Panel& panel, Um reading, CutBy by = CutBy::straight) {
    const Cutting made = cut_within(panel, film_with_margins(), reading, by);
    const Box box = box_of(made.piece().shapes.front().outline.outer);
    return {static_cast<double>(box.along()) / um_per_mm,
            static_cast<double>(box.across()) / um_per_mm};
}

} // namespace

TEST_CASE("a size is one reading a side, an outline two") {
    CHECK(sides(bare(size(400, 300)), 0) == Point{440, 340});
    CHECK(sides(bare(size(400, 300)), tolerance) == Point{445, 345});
    const Panel outlined = bare(corners({{0, 0}, {400, 0}, {400, 300}, {0, 300}}));
    CHECK(sides(outlined, tolerance) == Point{450, 350});
}

TEST_CASE("along the outline the bleed takes it, square to sides of any slope") {
    CHECK(sides(bare(size(400, 300)), tolerance, CutBy::contour) == Point{425, 325});
    const Panel outlined = bare(corners({{0, 0}, {400, 0}, {400, 300}, {0, 300}}));
    // 2 × (10 + 5 √2), up to the grid.
    CHECK(sides(outlined, tolerance, CutBy::contour) == Point{434.144, 334.144});
}

TEST_CASE("a tolerance of the panel's own stands before the job's: 0 is one") {
    Panel own = bare(size(400, 300));
    own.tolerance = 2'000;
    CHECK(sides(own, tolerance) == Point{442, 342});
    own.tolerance = 0;
    CHECK(sides(own, tolerance) == Point{440, 340});
}

TEST_CASE("a crown's chord and rise were both read") {
    Panel domed = bare(size(1000, 300));
    domed.crown = Crown{100, 0, false};
    // A chord of 1 with a rise of 0.1 has an arc of 1.026456911, one of 1005 with 105 is
    // 4 R atan(2h/c) long (Machinery's Handbook, 31st edition (2020), page 83).
    const double wide = sides(domed, tolerance).x;
    const double arc =
        4 * ((1005.0 * 1005 + 4 * 105.0 * 105) / (8 * 105)) * std::atan(210.0 / 1005);
    CHECK(std::abs(wide - (arc + 40)) < 1.001); // up to a whole millimetre
    CHECK(wide >= arc + 40);
    domed.crown->measured_over = true;
    CHECK(sides(domed, tolerance).x == 1045);
}

TEST_CASE("the margin stays where the roll is narrow: the least one and the error") {
    // 1482 + 2 × (15 + 2.5) is beyond 1512; 1476 + 35 is not.
    const Film narrow = [] {
        Film out = film(Direction::one_way);
        out.allowances.handling = {20'000, 15'000};
        return out;
    }();
    Panel wide = bare(size(300, 1476));
    wide.seam = SeamRule::never;
    CHECK(cut_within(wide, narrow, tolerance, CutBy::straight).ways.size() == 1);
    wide.form = size(300, 1482);
    CHECK(cut_within(wide, narrow, 0, CutBy::straight).ways.size() == 1);
    CHECK(cut_within(wide, narrow, tolerance, CutBy::straight).ways.empty());
}

namespace {

double off_by(Dice& dice) {
    const double most = static_cast<double>(tolerance) / um_per_mm;
    // Mostly as far off as can be.
    return dice.whole(0, 3) == 0 ? dice.real(-most, most) : (dice.whole(0, 1) == 0 ? most : -most);
}

std::vector<Point> misread(Dice& dice, std::vector<Point> points) {
    for (Point& p : points)
        p = {p.x + off_by(dice), p.y + off_by(dice)};
    return points;
}

double outside(const Polygon& film, const Polygon& blank) {
    return Figure::of({film}).without(Figure::of({blank})).area();
}

} // namespace

TEST_CASE("however the readings are off, the blank covers the panel: 400 outlines") {
    Dice dice(5);
    for (int i = 0; i < 400; ++i) {
        const std::vector<Point> read =
            convex(dice, dice.whole(4, 9), dice.real(300, 700), dice.real(200, 500));
        const Panel as_read = bare(corners(read));
        const Panel as_it_is = bare(corners(misread(dice, read)));
        Film none = film();
        none.allowances.bleed = 0;
        const Cutting blank = cut_within(as_read, none, tolerance, CutBy::contour);
        const Cutting true_panel = cut_within(as_it_is, none, 0, CutBy::contour);
        CAPTURE(i);
        CHECK(outside(true_panel.piece().wrapped, blank.piece().shapes.front().outline) < 0.01);
    }
}

// Of a parabola through three points an error e of each shows between them as 5/4 e at most (the
// Lebesgue constant of three equally spaced nodes; from memory).
TEST_CASE("between its readings an arc is off by a quarter more than they are") {
    const auto along = [](std::optional<Point> through, Um reading) {
        const Panel drawn =
            bare(outline({{{0, 0}}, {{400, 0}, through}, {{400, 300}}, {{0, 300}}}));
        return sides(drawn, reading).x;
    };
    CHECK(along({}, tolerance) == 450);
    CHECK(along(Point{200, -20}, 0) == 440);
    CHECK(along(Point{200, -20}, tolerance) == 452.5 + 0.5); // up to a whole millimetre
}

TEST_CASE("a shallow arc whose readings were off is covered between them too") {
    // It runs at 45 degrees, so that both readings of a point move it straight out or in.
    const auto panel_of = [](double from, double through, double to) {
        const auto out = [](double x, double y, double by) { return Point{x + by, y - by}; };
        return bare(
            outline({{out(0, 0, from)}, {out(400, 400, to), out(205, 195, through)}, {{0, 400}}}));
    };
    const double most = static_cast<double>(tolerance) / um_per_mm;
    Film none = film();
    none.allowances.bleed = 0;
    const Cutting blank = cut_within(panel_of(0, 0, 0), none, tolerance, CutBy::contour);
    const Cutting as_it_is = cut_within(panel_of(most, most, -most), none, 0, CutBy::contour);
    // Square millimetres along 566 mm of arc: as far as its chords stray.
    CHECK(outside(as_it_is.piece().wrapped, blank.piece().shapes.front().outline) < 1);
}

TEST_CASE("however the readings are off, the rectangle holds the crowned panel: 400 outlines") {
    Dice dice(6);
    for (int i = 0; i < 400; ++i) {
        const std::vector<Point> read =
            convex(dice, dice.whole(4, 9), dice.real(200, 500), dice.real(200, 400));
        Panel as_read = bare(corners(read));
        Panel as_it_is = bare(corners(misread(dice, read)));
        const double wide = dice.real(0, 60);
        const double high = dice.real(0, 60);
        as_read.crown = Crown{wide, high, false};
        as_it_is.crown =
            Crown{std::max(0.0, wide + off_by(dice)), std::max(0.0, high + off_by(dice)), false};
        const Point cut_sides = sides(as_read, tolerance);
        const Cutting true_panel = cut(as_it_is, film_with_margins());
        const BoxMm box = box_mm(true_panel.piece().wrapped);
        CAPTURE(i);
        CHECK(cut_sides.x >= box.x1 - box.x0 + 40);
        CHECK(cut_sides.y >= box.y1 - box.y0 + 40);
    }
}

TEST_CASE("however the readings are off, the blank covers pointed corners with their tucks") {
    Dice dice(7);
    double farthest_sides = 0;
    for (int i = 0; i < 150; ++i) {
        // Triangles and quadrangles, slanted: their corners point any way.
        const int points = dice.whole(3, 4);
        const std::vector<Point> read = star(dice, points, 120, 400, {0, 0});
        Panel as_read = bare(corners(read));
        as_read.edges_none = false;
        as_read.edges = {wrap("all", dice.whole(10, 40)), wrap("1-2", dice.whole(0, 40))};
        Panel as_it_is = as_read;
        as_it_is.form = corners(misread(dice, read));
        Film none = film();
        none.width = 6'000'000;
        none.allowances.bleed = 0;
        const Cutting blank = cut_within(as_read, none, tolerance, CutBy::contour);
        const Cutting true_panel = cut_within(as_it_is, none, 0, CutBy::contour);
        CAPTURE(i);
        CHECK(outside(true_panel.piece().wrapped, blank.piece().shapes.front().outline) < 0.01);
        // No more than it takes: most panels need what their sides need.
        const Panel allowing = piece::allowing_for_errors(as_read, none, by_contour(), tolerance);
        farthest_sides += static_cast<double>(*allowing.allowances.bleed) / um_per_mm;
    }
    CHECK(farthest_sides / 150 < 25);
}
