// SPDX-License-Identifier: MIT
// What tucks and recesses ask of the film. The rule w / (r - w) on hollow edges and w / (r + w) on
// bulging ones is plain geometry of two circles; that it decides whether a tuck holds is common
// practice, no source.
#include "cutting.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

namespace pelt::piece {
namespace {

/// A panel with an arch of the radius cut out of its lower edge.
Panel arched(double radius) {
    return test::panel(test::outline({{{0, 0}},
                                      {{300, 0}},
                                      {{300 + 2 * radius, 0}, Point{300 + radius, radius}, "arch"},
                                      {{600 + 2 * radius, 0}},
                                      {{600 + 2 * radius, 2 * radius}},
                                      {{0, 2 * radius}}}));
}

std::string said(Panel panel, double edge_percent) {
    Film film = test::film();
    film.width = 5'000'000;
    film.stretch_edge_percent = edge_percent;
    film.stretch_panel_percent = 12;
    return test::cut(panel, film).said();
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

TEST_CASE("a wheel arch: w / (r - w), and the longest tuck that holds") {
    Panel panel = arched(340);
    panel.edges = {test::wrap("arch", 13)};
    // 13 / 327 = 3.98 %, 14 / 326 = 4.29 %; 340 × 0.04 / 1.04 = 13.08 mm.
    CHECK(said(panel, 4).empty());
    panel.edges = {test::wrap("arch", 14)};
    const std::string text = said(panel, 4);
    CHECK(has(text, "stretched round hollow edges beyond the film's 4 % on an edge: 'arch' (14 mm "
                    "asks 4.3 %, 13 mm holds)"));
    CHECK(said(panel, 5).empty());
    // A mark above a quarter more: 16 / 324 = 4.94 %, 17 / 323 = 5.26 %.
    panel.edges = {test::wrap("arch", 16)};
    CHECK_FALSE(has(said(panel, 4), "tuck too wide"));
    panel.edges = {test::wrap("arch", 17)};
    CHECK(has(said(panel, 4),
              "hollow edge, tuck too wide: 'arch'; tuck less, or cut the film in"));
}

TEST_CASE("a round rim bulges: w / (r + w): its hole is hollow") {
    Panel disc = test::panel(test::circle({0, 0}, 150));
    disc.edges = {test::wrap("all", 6)};
    // 6 / 156 = 3.85 %, 7 / 157 = 4.46 %; 150 × 0.04 / 0.96 = 6.25 mm.
    CHECK(said(disc, 4).empty());
    disc.edges = {test::wrap("all", 7)};
    CHECK(has(said(disc, 4),
              "gathered round bulging edges, to be worked in with heat: 1-2 to 2-1"));
    // Above 20 %, but not on a handle: 37 / 187 = 19.8 %, 38 / 188 = 20.2 %.
    disc.edges = {test::wrap("all", 37)};
    CHECK_FALSE(has(said(disc, 4), "tuck too wide"));
    disc.edges = {test::wrap("all", 38)};
    CHECK(has(said(disc, 4), "bulging edge, tuck too wide: 1-2 to 2-1; tuck less, or fold it"));
    disc.is = PanelKind::door_handle;
    CHECK_FALSE(has(said(disc, 4), "tuck too wide"));
    disc.edges = {test::wrap("all", 0)};
    Opening hole = test::opening("lamp", test::circle({0, 0}, 80));
    hole.wrap = 8 * um_per_mm;
    disc.openings = {hole};
    CHECK(has(said(disc, 4), "opening 'lamp' (8 mm asks 11.1 %, 3 mm holds)"));
    // No tuck at all holds round a hole as small as this.
    disc.openings.front().form = test::circle({0, 0}, 20);
    CHECK(has(said(disc, 4), "opening 'lamp' (8 mm asks 66.7 %, none holds)"));
}

TEST_CASE("edges and openings with the same figures share them: every one is named") {
    Panel panel = test::panel(test::size(1000, 500));
    for (const char* name : {"left pipe", "right pipe"}) {
        const double x = name[0] == 'l' ? 200 : 800;
        panel.openings.push_back(test::opening(name, test::circle({x, 250}, 60)));
        panel.openings.back().wrap = 8 * um_per_mm;
    }
    // 8 / 52 = 15.4 %, 60 × 0.04 / 1.04 = 2.3 mm.
    CHECK(has(said(panel, 4), "4 % on an edge: opening 'left pipe', opening 'right pipe' (8 mm asks "
                              "15.4 %, 2 mm holds)"));
}

TEST_CASE("straight edges and sharp corners ask nothing: without a limit nothing is said") {
    Panel notched = test::panel(test::corners(
        {{0, 0}, {400, 0}, {400, 100}, {600, 100}, {600, 0}, {1000, 0}, {1000, 500}, {0, 500}}));
    notched.edges = {test::wrap("all", 30)};
    CHECK(said(notched, 1).empty());
    Panel panel = arched(100);
    panel.edges = {test::wrap("arch", 30)};
    Film film = test::film();
    CHECK(test::cut(panel, film).said().empty());
}

TEST_CASE("an arch drawn by many points is bent as the arc is") {
    std::vector<Point> points{{0, 0}, {300, 0}};
    for (int i = 1; i < 36; ++i) {
        const double a = 3.14159265358979 * (1 - i / 36.0);
        points.push_back({640 + 340 * std::cos(a), 340 * std::sin(a)});
    }
    for (const Point& p : {Point{980, 0}, Point{1280, 0}, Point{1280, 700}, Point{0, 700}})
        points.push_back(p);
    Panel panel = test::panel(test::corners(points));
    panel.edges = {test::wrap("all", 14)};
    // Every chord is an edge of its own: those side by side are named from the first to the last.
    CHECK(has(said(panel, 4), "4 % on an edge: 2-3 to 36-37 (14 mm asks 4.3 %, 13 mm holds)"));
    CHECK(said(panel, 5).empty());
}

TEST_CASE("a recess: its walls over its narrower side") {
    Panel panel = test::panel(test::size(1000, 500));
    panel.edges_none = true;
    panel.recesses = {{"plate", 540, 130, 7, {}}};
    // 14 / 130 = 10.8 %
    CHECK(said(panel, 4).empty());
    panel.recesses.front().depth_mm = 9;
    CHECK(has(said(panel, 4), "recess 'plate' asks 13.8 % stretch (film: 12 %); give it an inlay"));
}

} // namespace
} // namespace pelt::piece
