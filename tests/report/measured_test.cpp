// SPDX-License-Identifier: MIT
// Panels drawn as they were measured.
#include "report/crown_section.hpp"
#include "report/draw/picture.hpp"
#include "report/measured_outline.hpp"
#include "report/measured_panel.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::report;

namespace {

OutlineSegment corner(double x, double y) {
    return {{x, y}, std::nullopt, "", {}};
}

std::vector<std::string> words_in(const draw::Picture& picture) {
    std::vector<std::string> out;
    for (const draw::Mark& mark : picture.marks)
        if (const auto* text = std::get_if<draw::Text>(&mark))
            out.push_back(text->words);
    return out;
}

bool says(const draw::Picture& picture, const std::string& words) {
    const std::vector<std::string> all = words_in(picture);
    return std::find(all.begin(), all.end(), words) != all.end();
}

/// A half disc of radius 100 on a straight base.
Panel half_disc() {
    OutlineForm form;
    form.segments = {corner(-100, 0), corner(100, 0)};
    form.segments[0].through = Point{0, 100};
    form.segments[0].name = "top";
    Panel panel;
    panel.name = "cap";
    panel.sides = Sides::both;
    panel.form = form;
    panel.forward = Heading::left;
    panel.crown = Crown{12, -5, false};
    return panel;
}

} // namespace

TEST_CASE("an arc is drawn through its point, every point as far from the center") {
    const MeasuredOutline outline = measured_outline(half_disc());
    CHECK(outline.points.size() == 3);
    CHECK(outline.low.y == doctest::Approx(0).epsilon(1e-12));
    CHECK(outline.high.y == doctest::Approx(100).epsilon(1e-3)); // a chord of 1/32 of the arc
    for (const Point& p : outline.curve)
        CHECK(std::abs(std::hypot(p.x, p.y) - 100) < 1e-9);
    REQUIRE(outline.names.size() == 1);
    CHECK(std::abs(outline.names[0].at.x) < 10);
}

TEST_CASE("an arc through a point on the chord is the chord") {
    OutlineForm form;
    form.segments = {corner(0, 0), corner(200, 0), corner(100, 50)};
    form.segments[1].through = Point{100, 0};
    CHECK(measured_outline(form).curve.size() == 3);
}

TEST_CASE("a drawing says what the tape said: corners, extents, rises, the way forward") {
    const draw::Picture picture = measured_panel(half_disc(), Measures(Unit::mm));
    for (const char* words :
         {"1:  -100 / 0", "2:  100 / 0", "through 0 / 100", "200 mm", "'top'", "forward",
          "rise 12 mm over the width", "hollow 5 mm over the height"})
        CHECK_MESSAGE(says(picture, words), words);
    CHECK(words_in(picture).back() ==
          "cap, drawn left; the right one is its mirror image; drawn 5 times as large");
    CHECK(says(measured_panel(half_disc(), Measures(Unit::in)), "7 7/8 in"));
}

TEST_CASE("girths are drawn with their tapes and readings") {
    Panel panel;
    panel.name = "front bumper";
    panel.form = GirthsForm{{{0, 110, 190, {}}, {650, 245, 250, {}}, {1300, 110, 190, {}}}, true};
    const draw::Picture picture = measured_panel(panel, Measures(Unit::mm));
    for (const char* words : {"at 650", "up 245", "down 250", "1300 mm", "495 mm"})
        CHECK_MESSAGE(says(picture, words), words);
}

TEST_CASE("no two words of a drawing lie over one another, and none outside it") {
    Panel panel = half_disc();
    const draw::Picture picture = measured_panel(panel, Measures(Unit::mm));
    const draw::UnknownLetters letters;
    std::vector<draw::Box> boxes;
    for (const draw::Mark& mark : picture.marks)
        if (const auto* text = std::get_if<draw::Text>(&mark)) {
            const draw::Box box = draw::box_of(*text, letters);
            for (const draw::Box& other : boxes)
                CHECK_FALSE(box.overlaps(other));
            boxes.push_back(box);
        }
    for (const draw::Box& box : boxes)
        CHECK(draw::Box{0, 0, picture.width, picture.height}.holds(box));
}

TEST_CASE("a scan is named and not drawn") {
    Panel panel;
    panel.name = "wing end";
    SurfaceForm scan;
    scan.file = "wing-end.obj";
    panel.form = scan;
    CHECK(words_in(measured_panel(panel, Measures(Unit::mm))) ==
          std::vector<std::string>{
              "wing end: scanned, wing-end.obj ('pelt area' draws it laid flat)"});
}

TEST_CASE("on a bulge the straightedge touches the middle, in a hollow its gap is there") {
    for (const double rise : {12.0, -12.0}) {
        const CrownSection section = crown_section({{0, 700}, {1, 0}, 800, rise});
        const Point middle = section.arc[section.arc.size() / 2];
        const double level = section.straightedge.front().y;
        CHECK(section.straightedge.back().y == level);
        CHECK(level - middle.y == doctest::Approx(rise < 0 ? 12 : 0));
        CHECK(level - section.arc.front().y == doctest::Approx(rise < 0 ? 0 : 12));
        CHECK(level - section.arc.back().y == doctest::Approx(rise < 0 ? 0 : 12));
        CHECK(section.gaps.size() == (rise < 0 ? 1U : 2U));
        for (const std::vector<Point>& gap : section.gaps)
            CHECK(gap.back().y - gap.front().y == doctest::Approx(12));
    }
}
