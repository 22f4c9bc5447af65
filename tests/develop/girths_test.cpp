// SPDX-License-Identifier: MIT
// Panels measured by girths along a spine, straight or smooth between the stations.
#include "develop/develop.hpp"
#include "model/monotone_cubic.hpp"
#include "panels.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace pelt;
using namespace pelt::test;

namespace {

GirthsForm stations(const std::vector<GirthStation>& list, bool smooth = false) {
    return {list, smooth};
}

DevelopedPanel developed(const Panel& panel) {
    Faults faults;
    DevelopedPanel out = develop::develop(panel, faults);
    REQUIRE(out.blanks.size() == 1);
    return out;
}

const std::vector<GirthStation> bumper{
    {0, 180, 240, {}}, {1150, 260, 300, {}}, {2300, 180, 240, {}}};

} // namespace

TEST_CASE("girths: straight between the stations, edges top, bottom, start and end") {
    const DevelopedPanel out = developed(panel(stations(bumper)));
    const Blank& blank = out.blanks.front();
    const std::vector<Point> expected{{0, -240},   {1150, -300}, {2300, -240},
                                      {2300, 180}, {1150, 260},  {0, 180}};
    CHECK(blank.outline.points == expected);
    REQUIRE(blank.edges.size() == 4);
    const std::vector<int> tags{0, 0, 1, 2, 2, 3};
    CHECK(blank.outline.edge == tags);
    CHECK(develop::edges_selected(blank, "bottom") == std::vector<int>{0});
    CHECK(develop::edges_selected(blank, "end") == std::vector<int>{1});
    CHECK(develop::edges_selected(blank, "right") == std::vector<int>{1});
    CHECK(develop::edges_selected(blank, "top") == std::vector<int>{2});
    CHECK(develop::edges_selected(blank, "start") == std::vector<int>{3});
    CHECK(develop::edges_selected(blank, "left") == std::vector<int>{3});
    CHECK(develop::edges_selected(blank, "all").size() == 4);
    CHECK(develop::edges_selected(blank, "1-2").empty());
    // Trapezium rule: (420 + 2 x 560 + 420) / 2 x 1150.
    CHECK(std::abs(out.visible_mm2 - 1127000) < 1e-6);
}

TEST_CASE("girths: the stretch is unknown, and no figure stands for it") {
    Faults faults;
    const StretchAsked stretch = develop::develop(panel(stations(bumper)), faults).stretch;
    CHECK(stretch.is == StretchAsked::Is::unknown);
    CHECK_FALSE(stretch.natural_percent.has_value());
    CHECK_FALSE(stretch.bound_percent.has_value());
    CHECK(faults.empty());
}

TEST_CASE("girths: Simpson's published waterplane, smooth") {
    // Ship Stability for Masters and Mates, p. 74: half-ordinates 0, 3.7, 5.9, 7.6, 7.5, 4.6, 0.1 m
    // over 120 m; both sides 1207 m² by Simpson's rule. Straight lines give 1174 m².
    const std::vector<double> half{0, 3700, 5900, 7600, 7500, 4600, 100};
    std::vector<GirthStation> list;
    for (std::size_t i = 0; i < half.size(); ++i)
        list.push_back({20000.0 * static_cast<double>(i), half[i], half[i], {}});
    CHECK(std::abs(developed(panel(stations(list, true))).visible_mm2 / 1e6 - 1207) < 0.6);
    CHECK(std::abs(developed(panel(stations(list))).visible_mm2 / 1e6 - 1174) < 0.5);
}

TEST_CASE("girths: a pointed end has no edge") {
    const Blank blank =
        developed(panel(stations({{0, 0, 0, {}}, {500, 100, 100, {}}, {900, 50, 60, {}}})))
            .blanks.front();
    CHECK(blank.edges.size() == 3);
    CHECK(develop::edges_selected(blank, "start").empty());
    CHECK(develop::edges_selected(blank, "end").size() == 1);
    CHECK(blank.outline.points.size() == 5);
}

TEST_CASE(
    "girths: the smooth edge passes through every station and lies within 0.05 mm of itself") {
    const Panel drawn = panel(stations(
        {{0, 120, 80, {}}, {400, 260, 90, {}}, {900, 250, 200, {}}, {1500, 180, 140, {}}}, true));
    const Blank blank = developed(drawn).blanks.front();
    const auto& points = blank.outline.points;
    for (const Point station : {Point{0, 120}, Point{400, 260}, Point{900, 250}, Point{1500, 180},
                                Point{400, -90}, Point{900, -200}})
        CHECK(std::find(points.begin(), points.end(), station) != points.end());
    const MonotoneCubic upper({0, 400, 900, 1500}, {120, 260, 250, 180});
    double farthest = 0;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        if (blank.edges[static_cast<std::size_t>(blank.outline.edge[i])].number != "top")
            continue;
        const Point a = points[i];
        const Point b = points[i + 1];
        const std::vector<double> at{0, 400, 900, 1500};
        for (const double t : {0.25, 0.5, 0.75}) {
            const double x = a.x + t * (b.x - a.x);
            std::size_t k = 0;
            while (k + 2 < at.size() && x > at[k + 1])
                ++k;
            const double y = upper.at(k, (x - at[k]) / (at[k + 1] - at[k]));
            farthest = std::max(farthest, std::abs(y - (a.y + t * (b.y - a.y))));
        }
    }
    CHECK(farthest > 0);
    CHECK(farthest < 0.05);
}

TEST_CASE("girths: what cannot be developed is a fault at its station") {
    const auto fault_of = [](const GirthsForm& form, std::optional<Crown> crown = std::nullopt) {
        Panel drawn = panel(form);
        drawn.crown = crown;
        Faults faults;
        CHECK(develop::develop(drawn, faults).blanks.empty());
        REQUIRE_FALSE(faults.empty());
        CHECK(faults[0].severity == Severity::file);
        return faults[0].what;
    };
    CHECK(fault_of(stations({{0, 10, 10, {}}, {500, 10, 10, {}}, {500, 20, 20, {}}})) ==
          "this station is not farther along than the one before it");
    CHECK(fault_of(stations({{0, 10, 10, {}}, {500, 10, -10, {}}, {900, 20, 20, {}}})) ==
          "its girth, up and down together, is not more than zero");
    CHECK(fault_of(stations(bumper), Crown{10, 0, false}) ==
          "has both 'girths' and 'crown', but girths are true lengths already");
}

TEST_CASE("monotone cubic: straight data stay straight") {
    const MonotoneCubic line({0, 1, 3, 7}, {2, 4, 8, 16});
    for (std::size_t i = 0; i < 3; ++i) {
        CHECK(std::abs(line.at(i, 0.3) - (line.at(i, 0) + 0.3 * (line.at(i, 1) - line.at(i, 0)))) <
              1e-12);
        CHECK(line.chords(i, 0.05) == 1);
    }
    const MonotoneCubic two({0, 10}, {5, 1});
    CHECK(std::abs(two.at(0, 0.5) - 3) < 1e-12);
}

TEST_CASE("monotone cubic: rises and falls only where the points do") {
    // The data set of Fritsch and Carlson's paper, RPN 14 (from memory): a cubic spline through it
    // overshoots.
    const std::vector<double> x{7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20};
    const std::vector<double> y{0,        2.76429e-5, 4.37498e-2, 0.169183, 0.469428,
                                0.943740, 0.998636,   0.999919,   0.999994};
    const MonotoneCubic curve(x, y);
    for (std::size_t i = 0; i + 1 < x.size(); ++i) {
        double before = y[i];
        for (int k = 1; k <= 200; ++k) {
            const double now = curve.at(i, k / 200.0);
            CHECK(now >= before - 1e-15);
            before = now;
        }
        CHECK(std::abs(before - y[i + 1]) < 1e-15);
    }
}

TEST_CASE("monotone cubic: a station that is the largest stays the largest") {
    const MonotoneCubic curve({0, 1, 2, 3}, {0, 5, 1, 4});
    for (int k = 0; k <= 100; ++k) {
        CHECK(curve.at(0, k / 100.0) <= 5 + 1e-12);
        CHECK(curve.at(1, k / 100.0) <= 5 + 1e-12);
        CHECK(curve.at(1, k / 100.0) >= 1 - 1e-12);
        CHECK(curve.at(2, k / 100.0) >= 1 - 1e-12);
    }
}
