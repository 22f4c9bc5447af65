// SPDX-License-Identifier: MIT
// Maps of stretch: in bands, their rims, and where it is most in words.
#include "report/stretch_shades.hpp"
#include "report/verdict.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <vector>

using namespace pelt;
using namespace pelt::report;

namespace {

double area_of(const std::vector<Point>& ring) {
    double doubled = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point& a = ring[i];
        const Point& b = ring[(i + 1) % ring.size()];
        doubled += a.x * b.y - b.x * a.y;
    }
    return doubled / 2;
}

/// A strip of squares from (0, 0), the stretch of each as given, two triangles a square.
StretchMap strip(const std::vector<double>& percents) {
    StretchMap map;
    for (std::size_t i = 0; i < percents.size(); ++i) {
        const double x = static_cast<double>(i);
        map.cells.push_back({{Point{x, 0}, Point{x + 1, 0}, Point{x + 1, 1}}, percents[i]});
        map.cells.push_back({{Point{x, 0}, Point{x + 1, 1}, Point{x, 1}}, percents[i]});
        if (percents[i] > map.peak_percent) {
            map.peak_percent = percents[i];
            map.peak = {x + .5, .5};
        }
    }
    map.pull = {0, 1};
    return map;
}

} // namespace

TEST_CASE("shades cover the map once, each between the bounds of its band") {
    const StretchMap map = strip({0, 1, 2, 5, 9, 12, 3});
    const std::vector<Shade> shades = shades_of(map, 1.25, 8);
    double area = 0;
    std::vector<double> of_band(8, 0);
    for (const Shade& shade : shades) {
        CHECK(area_of(shade.ring) >= 0);
        area += area_of(shade.ring);
        of_band[static_cast<std::size_t>(shade.band)] += area_of(shade.ring);
    }
    CHECK(std::abs(area - 7) < 1e-12);
    // The last band takes what lies above the scale of 10 percent.
    for (const double each : of_band)
        CHECK(each > 0);
    // One stretch everywhere: one band, whole triangles.
    const std::vector<Shade> even = shades_of(strip({4, 4, 4}), 1.25, 8);
    CHECK(even.size() == 6);
    for (const Shade& shade : even)
        CHECK(shade.band == 3);
}

TEST_CASE("the rim of a map is what is left of its sides when shared ones go") {
    double length = 0;
    for (const auto& [a, b] : rim_of(strip({1, 2, 3})))
        length += std::hypot(b.x - a.x, b.y - a.y);
    CHECK(std::abs(length - 8) < 1e-12);
}

TEST_CASE("where it is most, in words: where it is much the same, no place is named") {
    CHECK(where_most(strip({1, 2, 9, 2, 1})) == "most in the middle, pulling up and down");
    CHECK(where_most(strip({9, 2, 2, 2, 1})) == "most at the left, pulling up and down");
    CHECK(where_most(strip({8.9, 9, 8.5, 8.7, 1})) == "much the same all over");
    CHECK(where_most(strip({.01, .02})) == "none anywhere");
}
