// SPDX-License-Identifier: MIT
// Outlines: arcs, the way round, point numbers, and the words that select edges.
#include "develop/develop.hpp"
#include "panels.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace pelt;
using namespace pelt::test;

namespace {

constexpr double pi = 3.14159265358979323846;

DevelopedPanel developed(const Panel& panel) {
    Faults faults;
    DevelopedPanel out = develop::develop(panel, faults);
    for (const Fault& fault : faults)
        MESSAGE(to_string(fault, false));
    REQUIRE(out.blanks.size() == 1);
    return out;
}

double area_of(const std::vector<Point>& ring) {
    double sum = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point b = ring[(i + 1) % ring.size()];
        sum += ring[i].x * b.y - b.x * ring[i].y;
    }
    return sum / 2;
}

std::vector<std::string> numbers_selected(const Blank& blank, std::string_view word) {
    std::vector<std::string> out;
    for (const int edge : develop::edges_selected(blank, word))
        out.push_back(blank.edges[static_cast<std::size_t>(edge)].number);
    return out;
}

/// The corners where edge tags change, each with the number of the edge that begins there.
std::vector<std::pair<std::string, Point>> starts(const Blank& blank) {
    std::vector<std::pair<std::string, Point>> out;
    const TaggedRing& ring = blank.outline;
    const std::size_t n = ring.points.size();
    for (std::size_t i = 0; i < n; ++i)
        if (ring.edge[i] != ring.edge[(i + n - 1) % n])
            out.emplace_back(blank.edges[static_cast<std::size_t>(ring.edge[i])].number,
                             ring.points[i]);
    return out;
}

using Strings = std::vector<std::string>;

} // namespace

TEST_CASE("a size panel numbers its corners from 1 = (0, 0), counter-clockwise") {
    const Blank blank = developed(panel(size(400, 300))).blanks.front();
    const auto begin = starts(blank);
    REQUIRE(begin.size() == 4);
    CHECK(begin[0] == std::pair<std::string, Point>{"1-2", {0, 0}});
    CHECK(begin[1] == std::pair<std::string, Point>{"2-3", {400, 0}});
    CHECK(begin[2] == std::pair<std::string, Point>{"3-4", {400, 300}});
    CHECK(begin[3] == std::pair<std::string, Point>{"4-1", {0, 300}});
    CHECK(numbers_selected(blank, "bottom") == Strings{"1-2"});
    CHECK(numbers_selected(blank, "right") == Strings{"2-3"});
    CHECK(numbers_selected(blank, "top") == Strings{"3-4"});
    CHECK(numbers_selected(blank, "left") == Strings{"4-1"});
    CHECK(numbers_selected(blank, "all").size() == 4);
}

TEST_CASE("a clockwise outline is turned round and keeps its point numbers") {
    Panel drawn = panel(outline({{{0, 0}}, {{0, 300}, {}, "rear"}, {{400, 300}}, {{400, 0}}}));
    const Blank blank = developed(drawn).blanks.front();
    CHECK(area_of(blank.outline.points) == 120000);
    CHECK(numbers_selected(blank, "left") == Strings{"1-2"});
    CHECK(numbers_selected(blank, "rear") == Strings{"1-2"});
    CHECK(numbers_selected(blank, "top") == Strings{"2-3"});
    CHECK(numbers_selected(blank, "right") == Strings{"3-4"});
    CHECK(numbers_selected(blank, "bottom") == Strings{"4-1"});
    const auto begin = starts(blank);
    REQUIRE(begin.size() == 4);
    CHECK(begin[0] == std::pair<std::string, Point>{"4-1", {0, 0}});
    CHECK(begin[1] == std::pair<std::string, Point>{"3-4", {400, 0}});
}

TEST_CASE("an arc is one edge, its point on the way has no number, its normal is the chord's") {
    Panel drawn =
        panel(outline({{{0, 0}}, {{200, 0}, Point{100, -100}}, {{200, 300}}, {{0, 300}}}));
    const Blank blank = developed(drawn).blanks.front();
    REQUIRE(blank.edges.size() == 4);
    CHECK(numbers_selected(blank, "bottom") == Strings{"1-2"});
    CHECK(blank.edges[0].normal == Point{0, -1});
    CHECK(blank.outline.points.size() > 10);
}

TEST_CASE("a closing arc that ends on point 1 is no new point") {
    const Blank blank = developed(panel(circle({0, 0}, 78))).blanks.front();
    REQUIRE(blank.edges.size() == 2);
    CHECK(numbers_selected(blank, "1-2") == Strings{"1-2"});
    CHECK(numbers_selected(blank, "2-1") == Strings{"2-1"});
    CHECK(numbers_selected(blank, "top") == Strings{"2-1"});
}

TEST_CASE("normals at 45 degrees count as top and bottom") {
    const Blank blank =
        developed(panel(corners({{0, -100}, {100, 0}, {0, 100}, {-100, 0}}))).blanks.front();
    CHECK(numbers_selected(blank, "bottom") == Strings{"1-2", "4-1"});
    CHECK(numbers_selected(blank, "top") == Strings{"2-3", "3-4"});
    CHECK(numbers_selected(blank, "left").empty());
    CHECK(numbers_selected(blank, "right").empty());
}

TEST_CASE("the words are about the drawing, before a crown scales it") {
    // 100 x 98: the normal of 1-2 is nearer to bottom; a high crown would turn it to the right.
    Panel drawn = panel(corners({{0, 0}, {100, 98}, {0, 200}}));
    drawn.crown = Crown{0, 100, false};
    const Blank blank = developed(drawn).blanks.front();
    CHECK(numbers_selected(blank, "bottom") == Strings{"1-2"});
}

TEST_CASE("a word that selects no edge is a fault that says which could be meant") {
    Panel drawn = panel(corners({{0, 0}, {400, 0}, {400, 300}, {0, 300}}));
    drawn.edges = {wrap("2-4", 12), wrap("3-2", 12), wrap("5-6", 12), wrap("gutter", 12),
                   wrap("start", 12)};
    Faults faults;
    CHECK(develop::develop(drawn, faults).blanks.empty());
    REQUIRE(faults.size() == 5);
    CHECK(to_string(faults[0], false) ==
          "panel 'panel': '2-4' is none of its edges; points 2 and 4 are not joined in this order; "
          "write 2-3");
    CHECK(faults[1].remedy == "points 3 and 2 are not joined in this order; write 2-3");
    CHECK(faults[2].remedy == "it has the points 1 to 4");
    CHECK(faults[3].remedy ==
          "write all, top, bottom, left, right or one of its edges: 1-2, 2-3, 3-4, 4-1");
    CHECK(faults[4].severity == Severity::file);
}

TEST_CASE("a flattened arc lies within 0.05 mm of the true one, scaled by the crown or not") {
    for (const double radius : {0.02, 3.0, 78.0, 600.0, 14000.0}) {
        Panel drawn = panel(circle({5, -3}, radius));
        drawn.crown = Crown{radius / 2, 0, false};
        const Blank blank = developed(drawn).blanks.front();
        // The rise is a quarter of the chord: arc / chord of Machinery's Handbook 31, p. 83.
        const double scale = 1.159119023;
        double deepest = 0;
        const std::vector<Point>& ring = blank.outline.points;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Point a = ring[i];
            const Point b = ring[(i + 1) % ring.size()];
            for (const double t : {0.0, 0.25, 0.5, 0.75}) {
                const double x = (a.x + t * (b.x - a.x)) / scale - 5;
                const double y = a.y + t * (b.y - a.y) + 3;
                deepest = std::max(deepest, scale * (radius - std::hypot(x, y)));
            }
        }
        CAPTURE(radius);
        CHECK(deepest <= 0.05 + 1e-6);
    }
}

TEST_CASE("segment areas: radius 1 (J. Burkardt, CIRCLE_SEGMENT test output)") {
    // In millimetres times 1000, so that flattening within 0.05 mm is 5e-5 of the radius.
    const std::pair<double, double> rows[] = {{1, 1.5708},        {0.5, 0.614185},
                                              {0.25, 0.226656},   {0.125, 0.081753},
                                              {0.0625, 0.029185}, {0.03125, 0.0103677}};
    for (const auto& [height, printed] : rows) {
        const double r = 1000;
        const double half = r * std::sqrt(2 * height - height * height);
        const double y = r * (height - 1);
        Panel drawn =
            panel(outline({{{-half, y}}, {{half, y}}, {{-half, y}, Point{0, r * height + y}}}));
        const auto& told_height = height;
        CAPTURE(told_height);
        // Inscribed chords lose less than 0.05 mm along the arc.
        CHECK(std::abs(developed(drawn).visible_mm2 / (r * r) - printed) < 1.6e-4);
    }
}

TEST_CASE("segment areas: diameter 1 (table of areas of the segments of a circle, p. 395)") {
    const std::pair<double, double> rows[] = {
        {.290, .189047}, {.300, .198168}, {.350, .244980}, {.400, .293369}, {.480, .372704}};
    for (const auto& [height, printed] : rows) {
        const double d = 2000;
        const double half = d * std::sqrt(height * (1 - height));
        Panel drawn =
            panel(outline({{{-half, 0}}, {{half, 0}}, {{-half, 0}, Point{0, d * height}}}));
        const auto& told_height = height;
        CAPTURE(told_height);
        CHECK(std::abs(developed(drawn).visible_mm2 / (d * d) - printed) < 3e-5);
    }
}

TEST_CASE("part-filled circles: area and chord by depth (US EPA, SWMM 5.2, xsect.dat)") {
    struct Row {
        double depth, area, chord;
    };
    for (const Row& row : {Row{.1, .05208, .6}, Row{.3, .25236, .9165}, Row{.6, .6264, .9798},
                           Row{.8, .8576, .8}, Row{.9, .94792, .6}}) {
        const double d = 2000;
        const double half = d * row.chord / 2;
        const double y = d * (row.depth - 0.5);
        Panel drawn = panel(outline({{{half, y}}, {{-half, y}}, {{half, y}, Point{0, -d / 2}}}));
        CAPTURE(row.depth);
        CHECK(std::abs(developed(drawn).visible_mm2 / (d * d * pi / 4) - row.area) < 4e-4);
    }
}

TEST_CASE("openings run clockwise and are taken off the visible area: inlays are not") {
    Panel drawn = panel(size(400, 300));
    drawn.openings = {opening("lamp", corners({{10, 10}, {60, 10}, {60, 40}, {10, 40}})),
                      opening("handle", corners({{100, 100}, {100, 150}, {140, 150}, {140, 100}}))};
    drawn.inlays = {{"recess", {250, 150}, 80, 60, std::nullopt, {}}};
    const DevelopedPanel out = developed(drawn);
    CHECK(out.visible_mm2 == 400 * 300 - 50 * 30 - 40 * 50);
    REQUIRE(out.blanks.front().openings.size() == 2);
    for (const BlankOpening& hole : out.blanks.front().openings)
        CHECK(area_of(hole.ring.points) < 0);
}

TEST_CASE("an inlay runs out of the panel, into an opening or into another inlay: faults") {
    Panel drawn = panel(size(400, 300));
    drawn.openings = {opening("lamp", corners({{10, 10}, {60, 10}, {60, 40}, {10, 40}}))};
    drawn.inlays = {{"a", {380, 150}, 80, 60, std::nullopt, {}},
                    {"b", {60, 40}, 30, 30, std::nullopt, {}},
                    {"c", {200, 150}, 50, 50, std::nullopt, {}},
                    {"d", {230, 150}, 50, 50, std::nullopt, {}},
                    {"beside c", {150, 150}, 50, 50, std::nullopt, {}}};
    Faults faults;
    CHECK(develop::develop(drawn, faults).blanks.empty());
    REQUIRE(faults.size() == 3);
    CHECK(faults[0].what == "the inlay 'a' runs out of the panel's outline");
    CHECK(faults[1].what == "the inlay 'b' runs into the opening 'lamp'");
    CHECK(faults[2].what == "the inlay 'd' runs into the inlay 'c'");
}
