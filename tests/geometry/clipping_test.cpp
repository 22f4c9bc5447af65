// SPDX-License-Identifier: MIT
// Unions, differences, intersections, and the one form in which figures are returned.
#include "geometry/geometry.hpp"
#include "geometry/tidy.hpp"
#include "geos_referee.hpp"
#include "random_figures.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace pelt;
using test::Dice;
using test::Figure;

namespace {

constexpr double grid_mm2 = 3; // half a micrometre along the outlines of two stars, and corners

double area_of(const std::vector<Polygon>& figures) {
    return to_mm2(geometry::doubled_area(figures));
}

Polygon box(Um x0, Um y0, Um x1, Um y1) {
    return {geometry::rectangle({{x0, y0}, {x1, y1}}), {}};
}

} // namespace

TEST_CASE("booleans of random figures are those of GEOS, and their areas add up") {
    Dice dice(11);
    for (int trial = 0; trial < 400; ++trial) {
        const auto a = geometry::positive_union(
            {geometry::on_grid(test::star(dice, dice.whole(3, 20), 50, 700, {0, 0}))});
        const auto b = geometry::positive_union({geometry::on_grid(
            test::star(dice, dice.whole(3, 20), 50, 700, {dice.real(-500, 500), 90}))});
        const Figure fa = Figure::of(a);
        const Figure fb = Figure::of(b);
        const auto both = geometry::unite(a, b);
        const auto common = geometry::intersect(a, b);
        const auto rest = geometry::subtract(a, b);
        CAPTURE(trial);
        CHECK(Figure::of(both).differs_by(fa.with(fb)) < grid_mm2);
        CHECK(Figure::of(common).differs_by(fa.within(fb)) < grid_mm2);
        CHECK(Figure::of(rest).differs_by(fa.without(fb)) < grid_mm2);
        CHECK(std::abs(area_of(a) + area_of(b) - area_of(both) - area_of(common)) < grid_mm2);
        CHECK(std::abs(area_of(a) - area_of(common) - area_of(rest)) < grid_mm2);
    }
}

TEST_CASE("tiles of a turned grid, united one by one, become the whole") {
    // The case in which other libraries lose tiles: neighbours share an edge.
    Dice dice(12);
    for (int trial = 0; trial < 50; ++trial) {
        const double angle = dice.real(0, 6.28);
        const auto at = [&](int i, int j) {
            return geometry::on_grid(Point{100 * (i * std::cos(angle) - j * std::sin(angle)),
                                           100 * (i * std::sin(angle) + j * std::cos(angle))});
        };
        std::vector<Polygon> whole;
        for (int i = 0; i < 4; ++i)
            for (int j = 0; j < 3; ++j)
                whole = geometry::unite(
                    whole, {{{at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)}, {}}});
        CAPTURE(trial);
        REQUIRE(whole.size() == 1);
        CHECK(whole[0].holes.empty());
        CHECK(std::abs(area_of(whole) - 120000) < 1);
    }
}

TEST_CASE("an opening cut out is a clockwise hole, and the area is exact") {
    const auto left = geometry::subtract({box(0, 0, 100000, 50000)}, {box(1, 1, 40001, 20001)});
    REQUIRE(left.size() == 1);
    REQUIRE(left[0].holes.size() == 1);
    CHECK(doubled_area(left[0].holes[0]) < 0);
    CHECK((geometry::doubled_area(left) ==
           2 * (DoubleArea{100000} * 50000 - DoubleArea{40000} * 20000)));
}

TEST_CASE("figures come back in one form: least point first, no needless points, in order") {
    const Ring ring{{10000, 0}, {10000, 5000}, {10000, 10000}, {0, 10000},
                    {0, 0},     {0, 0},        {5000, 0}};
    const Ring expected{{0, 0}, {10000, 0}, {10000, 10000}, {0, 10000}};
    CHECK(geometry::tidy(ring) == expected);
    const auto two = geometry::unite({box(50000, 0, 60000, 10000)}, {box(0, 0, 10000, 10000)});
    REQUIRE(two.size() == 2);
    CHECK(two[0].outer == expected);
}

TEST_CASE("spikes, crumbs and figures without area vanish") {
    CHECK(geometry::tidy({{0, 0}, {10000, 0}, {20000, 0}}).empty());
    CHECK(geometry::tidy({{0, 0}, {1, 1}, {2, 0}}).empty());
    const Ring spiked{{0, 0}, {10000, 0}, {30000, 0}, {10000, 0}, {10000, 10000}, {0, 10000}};
    CHECK(geometry::tidy(spiked) == Ring{{0, 0}, {10000, 0}, {10000, 10000}, {0, 10000}});
    const Ring crumbled{{0, 0}, {10000, 0}, {10001, 1}, {10000, 10000}, {0, 10000}};
    CHECK(geometry::tidy(crumbled).size() == 4);
}

TEST_CASE("shoelace: published polygons") {
    const auto doubled = [](std::vector<Point> points) {
        return to_mm2(doubled_area(geometry::on_grid(points)));
    };
    // Rosetta Code, task "Shoelace formula for polygonal area".
    CHECK(std::abs(doubled({{3, 4}, {5, 11}, {12, 8}, {9, 5}, {5, 6}})) == 30);
    // Wikipedia, "Shoelace formula" (from memory).
    CHECK(std::abs(doubled({{1, 6}, {3, 1}, {7, 2}, {4, 4}, {8, 5}})) == 16.5);
    // PostGIS manual, ST_Area: far from the origin, clockwise as listed.
    CHECK(
        doubled({{743238, 2967416}, {743238, 2967450}, {743265, 2967450}, {743265.625, 2967416}}) ==
        -928.625);
}

TEST_CASE("the nearest point of the grid, halves away from zero on both sides") {
    CHECK(geometry::on_grid(Point{0.0005, -0.0005}) == GridPoint{1, -1});
    CHECK(geometry::on_grid(Point{12.3456, -7.0001}) == GridPoint{12346, -7000});
}
