// SPDX-License-Identifier: MIT
// Crowns: true lengths from a straight measure and its rise, and the stretch that they ask.
#include "develop/crown.hpp"
#include "develop/develop.hpp"
#include "develop/surface/flatten.hpp"
#include "geometry/mesh/mesh.hpp"
#include "meshes.hpp"
#include "panels.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace pelt;
using namespace pelt::test;
using develop::Bow;

namespace {

DevelopedPanel developed(const Panel& panel) {
    Faults faults;
    DevelopedPanel out = develop::develop(panel, faults);
    REQUIRE(out.blanks.size() == 1);
    return out;
}

Panel crowned(OutlineForm form, Crown crown) {
    Panel out = panel(std::move(form));
    out.crown = crown;
    return out;
}

Point extent(const Blank& blank) {
    Point low = blank.outline.points.front();
    Point high = low;
    for (const Point& p : blank.outline.points) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    return {high.x - low.x, high.y - low.y};
}

double percent(const Crown& crown, double wide, double high) {
    const DevelopedPanel out = developed(crowned(size(wide, high), crown));
    CHECK(out.stretch.is == StretchAsked::Is::estimate);
    return out.stretch.percent;
}

} // namespace

TEST_CASE("arc over a chord with a rise: published figures") {
    // matheass.eu, Circular Sections, and HamCalc's arch table.
    CHECK(std::abs(develop::bow_over(21, 6).arc - 25.308373) < 5e-7);
    CHECK(std::abs(1 / develop::bow_over(21, 6).curvature - 12.1875) < 1e-12);
    CHECK(std::abs(develop::bow_over(0.97449536, 0.096919589).arc - 1) < 5e-8);
    CHECK(std::abs(develop::bow_over(10, 1).arc - 10.265) < 5e-4);
    CHECK(std::abs(1 / develop::bow_over(10, 1).curvature - 13) < 1e-12);
    // Machinery's Handbook 31, page 50: r = 12, h = 2 (chord printed as 13.27), and page 79.
    CHECK(std::abs(develop::bow_over(13.26649916, 2).arc - 14.06) < 5e-3);
    CHECK(std::abs(1 / develop::bow_over(16, 6).curvature - 8.33333333) < 5e-9);
    // The Civil-Engineer & Surveyor's Manual, page 23, input to four decimals.
    CHECK(std::abs(develop::bow_over(1, .3118).arc - 1.2419) < 1e-4);
}

TEST_CASE("arc over chord 1: own table, thirty-digit arithmetic") {
    const std::pair<double, double> rows[] = {
        {0.01, 1.000266645}, {0.02, 1.001066326}, {0.05, 1.006653390}, {0.10, 1.026456911},
        {0.15, 1.058959687}, {0.20, 1.103468494}, {0.25, 1.159119023}, {0.30, 1.224950867},
        {0.40, 1.383218932}, {0.50, 1.570796327}};
    for (const auto& [rise, arc] : rows) {
        CAPTURE(rise);
        CHECK(std::abs(develop::bow_over(1, rise).arc - arc) < 5e-10);
        CHECK(std::abs(develop::bow_over(1, -rise).arc - arc) < 5e-10);
        const auto back = develop::bow_along(arc, rise);
        REQUIRE(back);
        CHECK(std::abs(back->chord - 1) < 1e-8);
        CHECK(back->arc == arc);
    }
}

TEST_CASE("arcs by angle, radius 1: own table, thirty-digit arithmetic") {
    struct Row {
        double arc, height, chord;
    };
    for (const Row& row :
         {Row{0.17453293, 0.0038053019, 0.17431149}, Row{0.52359878, 0.034074174, 0.51763809},
          Row{1.0471976, 0.13397460, 1}, Row{1.5707963, 0.29289322, 1.4142136},
          Row{2.0943951, 0.5, 1.7320508}, Row{3.1415927, 1, 2}}) {
        CAPTURE(row.arc);
        CHECK(std::abs(develop::bow_over(row.chord, row.height).arc - row.arc) < 2e-7);
        CHECK(std::abs(develop::bow_over(row.chord, row.height).curvature - 1) < 1e-6);
    }
}

TEST_CASE("a bow beyond the half circle is a bow still: one that cannot rise so far is none") {
    // Three quarters of a circle of radius 100.
    const double pi = 3.14159265358979323846;
    CHECK(std::abs(develop::bow_over(141.42135624, 170.71067812).arc - 150 * pi) < 1e-5);
    CHECK_FALSE(develop::bow_along(100, 37));
    CHECK(develop::bow_along(100, 36));
}

TEST_CASE("crown: every coordinate is multiplied by arc / chord along its axis") {
    Panel drawn = crowned(size(1000, 500), {100, 50, false});
    drawn.openings = {opening("hole", corners({{100, 100}, {200, 100}, {200, 200}, {100, 200}}))};
    drawn.seam_lines = {{{{500, -10}, {500, 510}}, true, {}}};
    drawn.inlays = {{"recess", {700, 250}, 100, 60, std::nullopt, {}}};
    const Blank blank = developed(drawn).blanks.front();
    const double s = 1.026456911;
    CHECK(std::abs(extent(blank).x - 1000 * s) < 1e-6);
    CHECK(std::abs(extent(blank).y - 500 * s) < 1e-6);
    for (const Point& p : blank.openings[0].ring.points)
        CHECK((std::abs(p.x - 100 * s) < 1e-6 || std::abs(p.x - 200 * s) < 1e-6));
    CHECK(std::abs(blank.seam_lines[0].points[1].x - 500 * s) < 1e-6);
    CHECK(std::abs(blank.seam_lines[0].points[1].y - 510 * s) < 1e-6);
    CHECK(blank.seam_lines[0].always);
    CHECK(std::abs(blank.inlays[0].low.x - 650 * s) < 1e-6);
    CHECK(std::abs(blank.inlays[0].high.y - 280 * s) < 1e-6);
}

TEST_CASE("crown: the chord is the outline's full extent, arcs included") {
    // The arc bulges 100 beyond its ends: 1000 wide in all.
    Panel drawn =
        crowned(outline({{{0, 0}}, {{900, 0}}, {{900, 400}, Point{1000, 200}}, {{0, 400}}}),
                {100, 0, false});
    CHECK(std::abs(extent(developed(drawn).blanks.front()).x - 1026.456911) < 0.06);
}

TEST_CASE("crown: a round dome becomes its azimuthal equidistant disc") {
    // Own rows, thirty-digit arithmetic: rise, arc, disc area over a circle of 1000.
    struct Row {
        double rise, arc, disc;
    };
    for (const Row& row : {Row{50, 1006.65339, 795884.0519}, Row{100, 1026.45691, 827506.3361},
                           Row{250, 1159.11902, 1055227.128}}) {
        const DevelopedPanel out =
            developed(crowned(circle({0, 0}, 500), {row.rise, row.rise, false}));
        CAPTURE(row.rise);
        CHECK(std::abs(extent(out.blanks.front()).x - row.arc) < 1e-5);
        CHECK(std::abs(out.visible_mm2 / row.disc - 1) < 2e-4);
    }
}

TEST_CASE("measured over: lengths stay, the rises count for the stretch only") {
    const DevelopedPanel over = developed(crowned(size(1222.10, 615.87), {100, 60, true}));
    CHECK(extent(over.blanks.front()) == Point{1222.10, 615.87});
    const double straight = percent({100, 60, false}, 1200, 600);
    CHECK(std::abs(over.stretch.percent - straight) < 0.001);
}

TEST_CASE("measured over: a rise that no surface of that length has is a fault") {
    Faults faults;
    CHECK(develop::develop(crowned(size(100, 500), {40, 0, true}), faults).blanks.empty());
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].severity == Severity::file);
    CHECK(sentence_of(faults[0]).find(
              "a crown of 40 mm cannot rise over 100 mm measured along the surface") == 0);
}

TEST_CASE("stretch: one-way crowns ask none, exactly: without a crown it is unknown") {
    CHECK(developed(panel(size(900, 600))).stretch.is == StretchAsked::Is::unknown);
    for (const Crown& crown : {Crown{0, 80, false}, Crown{80, 0, false}, Crown{0, 0, false}}) {
        const StretchAsked stretch = developed(crowned(size(900, 600), crown)).stretch;
        CHECK(stretch.is == StretchAsked::Is::exact);
        CHECK(stretch.percent == 0);
    }
}

TEST_CASE("stretch: a round dome asks arc / chord - 1, exactly (Milnor 1969)") {
    const StretchAsked stretch = developed(crowned(circle({3, 4}, 500), {100, 100, false})).stretch;
    CHECK(stretch.is == StretchAsked::Is::exact);
    CHECK(std::abs(stretch.percent - 2.6456911) < 1e-7);
    // alpha / sin alpha - 1 at 30 degrees: rise .1339746 of the chord.
    CHECK(
        std::abs(
            developed(crowned(circle({0, 0}, 500), {133.97460, 133.97460, false})).stretch.percent -
            4.7198) < 5e-4);
    CHECK(developed(crowned(circle({0, 0}, 500), {100, -100, false})).stretch.is ==
          StretchAsked::Is::estimate);
    CHECK(developed(crowned(circle({0, 0}, 500), {100, 90, false})).stretch.is ==
          StretchAsked::Is::estimate);
    CHECK(developed(crowned(size(1000, 1000), {100, 100, false})).stretch.is ==
          StretchAsked::Is::estimate);
}

TEST_CASE("stretch: the tape formula's published check rows, and the meshes within 3 %") {
    struct Row {
        double wide, high;
        Crown crown;
        double tape, mesh;
    };
    for (const Row& row :
         {Row{1400, 1200, {40, 60, false}, .424, .429}, Row{1000, 500, {30, 15, false}, .225, .228},
          Row{1200, 600, {100, 60, false}, 2.05, 2.07}, Row{600, 400, {80, 60, false}, 5.35, 5.38},
          Row{300, 200, {60, 40, false}, 10.15, 10.16},
          Row{200, 160, {60, 50, false}, 22.20, 22.21}, Row{400, 400, {40, -40, false}, 2.91, 2.90},
          Row{1500, 250, {20, 40, false}, .252, .248}}) {
        CAPTURE(row.wide);
        CAPTURE(row.high);
        const double ours = percent(row.crown, row.wide, row.high);
        CHECK(std::abs(ours / row.tape - 1) < 0.004);
        CHECK(std::abs(ours / row.mesh - 1) < 0.03);
        CHECK(ours == percent({row.crown.high_mm, row.crown.wide_mm, false}, row.high, row.wide));
    }
}

TEST_CASE("stretch: the factors by aspect rise to those of an endless strip, in their order") {
    using develop::factors_of;
    using develop::Rim;
    const std::pair<double, double> rows[] = {{1, .187}, {1.25, .229}, {1.5, .263}, {2, .313},
                                              {3, .371}, {4, .402},    {6, .433},   {10, .453}};
    for (const auto& [aspect, factor] : rows)
        CHECK(std::abs(factors_of(Rim::any, aspect, false).least - factor) < 1e-12);
    for (const Rim rim : {Rim::any, Rim::ellipse})
        for (const bool saddle : {false, true}) {
            develop::Factors before;
            for (double aspect = 1; aspect < 40; aspect *= 1.03) {
                CAPTURE(aspect);
                const develop::Factors now = factors_of(rim, aspect, saddle);
                CHECK(now.bound <= now.least + 1e-12);
                CHECK(now.least <= now.natural);
                CHECK(now.natural <= .5);
                CHECK(now.least > before.least);
                CHECK(now.natural >= before.natural);
                CHECK(now.bound > before.bound);
                CHECK(now.least == factors_of(rim, aspect, !saddle).least);
                before = now;
            }
            CHECK(std::abs(factors_of(rim, 1e12, saddle).least - .5) < 1e-9);
            CHECK(std::abs(factors_of(rim, 1e12, saddle).natural - .5) < 1e-9);
        }
    // Half way in 1 - 1/A between 1.5 and 2: A = 12/7.
    CHECK(std::abs(factors_of(Rim::any, 12.0 / 7, false).least - .288) < 1e-12);
}

TEST_CASE("stretch: a disc of constant small curvature, closed forms") {
    // Milnor 1969: a/sin a - 1 of the radius a, that is a²/6; natural: 3 a²/16.
    const develop::Factors disc = develop::factors_of(develop::Rim::ellipse, 1, false);
    CHECK(std::abs(disc.least - 1. / 6) < 1e-12);
    CHECK(std::abs(disc.natural - 3. / 16) < 1e-12);
    CHECK(std::abs(disc.bound - 1. / 6) < 1e-12);
    CHECK(std::abs(develop::natural_of_dome(.05) / (3 * .05 * .05 / 16) - 1) < .002);
}

TEST_CASE("stretch: an outline that is nearly an ellipse counts as one, others as rectangles") {
    const auto asked = [](OutlineForm form) {
        return developed(crowned(std::move(form), {40, 40, false})).stretch.percent;
    };
    std::vector<Point> twelve;
    std::vector<Point> octagon;
    for (int i = 0; i < 24; ++i) {
        const double angle = 3.14159265358979323846 / 12 * i;
        const Point p{600 * std::cos(angle), 300 * std::sin(angle)};
        if (i % 2 == 0)
            twelve.push_back(p);
        if (i % 3 == 0)
            octagon.push_back(p);
    }
    const double rectangle = asked(size(1200, 600));
    const auto near = [](double a, double b) { return std::abs(a / b - 1) < 1e-6; };
    CHECK(near(asked(corners(octagon)), rectangle));
    CHECK(near(asked(corners({{-600, 0}, {0, -300}, {600, 0}, {0, 300}})), rectangle));
    CHECK(near(asked(corners(twelve)) / rectangle, .271 / .313) == false);
    CHECK(asked(corners(twelve)) < .9 * rectangle);
    CHECK(asked(corners(twelve)) > .8 * rectangle);
}

TEST_CASE("stretch of film lying by itself: as on meshes of the same crowns") {
    struct Row {
        bool ellipse;
        double wide, rise_wide, high, rise_high;
    };
    // Meshes of this fineness read up to 3 % too high, and most for the square.
    for (const Row& row :
         {Row{false, 400, 30, 400, 30}, Row{false, 500, 30, 400, 30}, Row{false, 1200, 40, 600, 30},
          Row{false, 900, 60, 300, 20}, Row{false, 600, 80, 400, 60}, Row{false, 400, 30, 400, -30},
          Row{false, 800, 40, 400, -30}, Row{true, 400, 30, 400, 20}, Row{true, 600, 40, 400, 30},
          Row{true, 800, 40, 400, 30}, Row{true, 400, 20, 400, -20},
          Row{true, 600, 30, 400, -20}}) {
        CAPTURE(row.ellipse);
        CAPTURE(row.wide);
        CAPTURE(row.rise_high);
        const int fine = 24;
        const test::Mesh mesh =
            row.ellipse
                ? test::crown_over_ellipse(row.wide, row.rise_wide, row.high, row.rise_high, fine)
                : test::crown(row.wide, row.rise_wide, row.high, row.rise_high,
                              static_cast<int>(std::lround(fine * row.wide / row.high)), fine);
        const auto flat =
            develop::flattened({mesh.points, mesh.triangles, mesh.triangles.size(),
                                geometry::loops_of(mesh.points, mesh.triangles).front()});
        REQUIRE(flat.has_value());
        const StretchAsked told = develop::stretch_of(
            develop::bow_over(row.wide, row.rise_wide), develop::bow_over(row.high, row.rise_high),
            row.ellipse ? develop::Rim::ellipse : develop::Rim::any);
        CHECK(std::abs(told.percent / 100 / flat->least_stretch - 1) < .05);
        CHECK(std::abs(*told.natural_percent / 100 / flat->natural_stretch - 1) < .06);
    }
}

TEST_CASE("a saddle asks what the dome of the same rises asks, to first order") {
    CHECK(percent({40, -40, false}, 400, 400) == percent({40, 40, false}, 400, 400));
}
