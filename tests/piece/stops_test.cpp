// SPDX-License-Identifier: MIT
// Stops beside tucks: the line of a stop goes on through its neighbours' tucks.
#include "cutting.hpp"
#include "geos_referee.hpp"
#include "random_figures.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

using namespace pelt;
using namespace pelt::test;

namespace {

constexpr double pi = std::numbers::pi;

Film wide_film() {
    Film out = film();
    out.width = 6'000'000;
    return out;
}

Polygon wrapped(const Panel& panel) {
    return cut(panel, wide_film()).piece().wrapped;
}

double across(const Panel& panel) {
    const BoxMm box = box_mm(wrapped(panel));
    return box.y1 - box.y0;
}

} // namespace

TEST_CASE("a wall that widens upwards ends its stop short of its bottom, side tucks too") {
    // Obtuse corners at the bottom; 190 high, tuck of 10 on the sides, none at the top.
    Panel wall = panel(corners({{-100, 0}, {100, 0}, {130, 190}, {-130, 190}}));
    wall.edges = {wrap("all", 10), wrap("top", 0), stop("bottom", 6)};
    CHECK(box_mm(wrapped(wall)).y0 == 6);
    // The strips of the sides reach from the stop's line to the top's.
    const double side = std::hypot(30, 190);
    const double trapezium = 184 * (260 + 200 + 2 * 6 * 30.0 / 190) / 2;
    const double strip = 10 * side * 184 / 190;
    CHECK(std::abs(area_of(wrapped(wall)) - (trapezium + 2 * strip)) < 0.2);
}

TEST_CASE("the same with sides that bulge: the line runs on over several chords") {
    Panel wall = panel(outline({{{-100, 0}},
                                {{100, 0}},
                                {{100, 200}, Point{200, 100}},
                                {{-100, 200}},
                                {{-100, 0}, Point{-200, 100}}}));
    wall.edges = {wrap("all", 30), stop("bottom", 25)};
    const BoxMm box = box_mm(wrapped(wall));
    CHECK(std::abs(box.y0 - 25) < 0.05);
    CHECK(box.y1 == 230);
}

TEST_CASE("beside a hollow edge nothing of its tuck is left under the line") {
    // A rectangle with a round bite of radius 40 in its bottom; the tuck of 25 goes into the bite.
    Panel bitten = panel(outline({{{-200, 0}},
                                  {{-40, 0}},
                                  {{40, 0}, Point{0, 40}, "bite"},
                                  {{200, 0}},
                                  {{200, 150}},
                                  {{-200, 150}}}));
    bitten.edges = {wrap("all", 0), stop("bottom", 6), wrap("bite", 25)};
    CHECK(box_mm(wrapped(bitten)).y0 == 6);
    CHECK(cut(bitten, wide_film()).faults.empty());
}

TEST_CASE("a small bevel between a stop and a tuck ends with the stop") {
    // The bevel of 3 by 4 has a tuck, its lower half lies beneath the line.
    Panel bevelled = panel(corners({{0, 0}, {200, 0}, {203, 4}, {203, 100}, {0, 100}}));
    bevelled.edges = {wrap("all", 0), wrap("2-3", 12), wrap("3-4", 12), stop("1-2", 5)};
    const BoxMm box = box_mm(wrapped(bevelled));
    CHECK(box.y0 == 5);
    CHECK(box.x1 == 215);
}

TEST_CASE("a neighbor that runs on nearly the same way keeps its tuck") {
    // A corner of 10 degrees: the line would take 200 mm of the tuck of 30.
    const double turn = 10 * pi / 180;
    const Point end{400 + 400 * std::cos(turn), 400 * std::sin(turn)};
    Panel bent = panel(corners({{0, 0}, {400, 0}, end, {400, 500}, {0, 500}}));
    bent.edges = {wrap("all", 0), stop("1-2", 3), wrap("2-3", 30)};
    const Polygon film = wrapped(bent);
    const auto lies_on = [&](double x, double y) {
        return holds(film, geometry::on_grid(Point{x, y}));
    };
    CHECK(lies_on(400 + 40 * std::cos(turn), 40 * std::sin(turn) - 25));
    CHECK(lies_on(400 + 2 + 20 * std::sin(turn), -20 * std::cos(turn)));
    CHECK(!lies_on(395, 1));
}

TEST_CASE("a slanted panel with a stop between two tucks: the stop's line bounds its height") {
    // The height comes from the crossing of the line 3 inside 2-3 with the side 3-4 moved out by
    // 35, solved here; the bottom is the crossing of two sides moved out by 40.
    Panel slanted = panel(corners(
        {{291, -24}, {124, 97}, {-8, 148}, {-150, 74}, {-281, -53}, {-39, -114}, {104, -82}}));
    slanted.edges = {wrap("all", 12), stop("top", 3), wrap("bottom", 40), wrap("3-4", 35)};
    const double u = std::hypot(132, 51);
    const double w = std::hypot(142, 74);
    const double sine = (132 * 74 + 51 * 142) / (u * w);
    const double cosine = (132 * 142 - 51 * 74) / (u * w);
    const double along = (35 + 3 * cosine) / sine;
    const double top = 148 - 3 * 132 / u + along * 51 / u;
    CHECK(std::abs(box_mm(wrapped(slanted)).y1 - top) < 0.002);
    CHECK(std::abs(across(slanted) - 318.068) < 0.002);
}

TEST_CASE("convex panels, one stop: no film beyond its line where the corners turn enough (GEOS)") {
    Dice dice(31);
    int looked_at = 0;
    for (int trial = 0; trial < 200; ++trial) {
        const std::vector<Point> ring =
            convex(dice, dice.whole(4, 7), dice.real(300, 700), dice.real(300, 700));
        const std::size_t n = ring.size();
        const double stop_mm = dice.whole(1, 8);
        const double tuck = dice.whole(5, 40);
        const Point a = ring[1];
        const Point b = ring[2];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        const Point way{(b.x - a.x) / length, (b.y - a.y) / length};
        // Both neighbours turn by 35 to 145 degrees and are long enough.
        const auto is_plain = [&](Point from, Point to) {
            const double side = std::hypot(to.x - from.x, to.y - from.y);
            const double sine = ((to.x - from.x) * way.y - (to.y - from.y) * way.x) / side;
            return std::abs(sine) > 0.58 && side > 150;
        };
        if (!is_plain(ring[0], a) || !is_plain(b, ring[3 % n]))
            continue;
        Panel drawn = panel(corners(ring));
        drawn.edges = {wrap("all", static_cast<Um>(tuck)), stop("2-3", static_cast<Um>(stop_mm))};
        const auto at = [&](double along, double in) {
            return Point{a.x + along * way.x - in * way.y, a.y + along * way.y + in * way.x};
        };
        const Figure beyond = Figure::of(
            {at(-500, -500), at(length + 500, -500), at(length + 500, stop_mm), at(-500, stop_mm)});
        const Figure grown = Figure::of(geometry::grown(ring, [&] {
            std::vector<double> moves(n, tuck);
            moves[1] = 0;
            return moves;
        }()));
        CAPTURE(trial);
        ++looked_at;
        CHECK(Figure::of(wrapped(drawn)).differs_by(grown.without(beyond)) < 1);
    }
    CHECK(looked_at > 60);
}
