// SPDX-License-Identifier: MIT
#include "job.hpp"
#include "report/draw/label.hpp"
#include "report/draw/svg.hpp"
#include "report/facts.hpp"
#include "report/svg_text.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::report;
using draw::LabelForm;
using draw::LabelSpace;
using draw::PieceLabel;

namespace {

/// Well-formed XML: every tag closed in turn, every & an entity. Returns the number of elements, or
/// -1 where something is wrong.
int well_formed(const std::string& text) {
    std::vector<std::string> open;
    int elements = 0;
    for (std::size_t at = text.find_first_of("<&"); at != std::string::npos;
         at = text.find_first_of("<&", at + 1)) {
        if (text[at] == '&') {
            const std::string entity = text.substr(at, text.find(';', at) - at + 1);
            if (entity != "&amp;" && entity != "&lt;" && entity != "&gt;" && entity != "&quot;")
                return -1;
            continue;
        }
        const std::size_t end = text.find('>', at);
        if (end == std::string::npos)
            return -1;
        const std::string tag = text.substr(at + 1, end - at - 1);
        if (tag.front() == '?')
            continue;
        if (tag.front() == '/') {
            if (open.empty() || open.back() != tag.substr(1))
                return -1;
            open.pop_back();
            continue;
        }
        ++elements;
        if (tag.back() != '/')
            open.push_back(tag.substr(0, tag.find_first_of(" \n")));
    }
    return open.empty() ? elements : -1;
}

int count_of(const std::string& text, const std::string& part) {
    int count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++count;
    return count;
}

draw::Ring square(double side) {
    return {{0, 0}, {side, 0}, {side, side}, {0, side}};
}

const draw::LabelSizes sizes{{150, 120, 100, 84, 70, 58, 48},
                             {120, 100, 84, 70, 58, 48, 38, 30, 22}};

std::optional<draw::SetLabel> set(const PieceLabel& label, const draw::Ring& room) {
    return draw::set_label(label, LabelSpace(room, {}), sizes, draw::UnknownLetters());
}

std::string svg_of(const draw::SetLabel& label) {
    return draw::to_svg(draw::picture_of(label, draw::UnknownLetters()));
}

} // namespace

TEST_CASE("a drawing is well-formed and has one group a piece, with title and description") {
    const Sheet sheet = test::sheet(test::whole_van, test::priced_film);
    const std::string svg = to_svg(sheet);
    const int pieces = static_cast<int>(pieces_by_number(sheet.plan).size());
    CHECK(well_formed(svg) > 0);
    CHECK(count_of(svg, "<g class=\"piece ") == pieces);
    CHECK(count_of(svg, "<desc>") == pieces);
    const int rolls = static_cast<int>(sheet.plan.layout().rolls.size());
    CHECK(count_of(svg, "<title>") == pieces + rolls + 1);
    CHECK(count_of(svg, "<style>") == 1);
    CHECK(count_of(svg, "<script") == 0);
    int cuts = 0;
    for (const UsedRoll& used : sheet.plan.layout().rolls)
        cuts += static_cast<int>(used.cuts.size());
    CHECK(count_of(svg, "<path class=\"cut\" d=\"M") == cuts + 1); // and one in the legend
    CHECK(to_svg(sheet) == svg);
}

TEST_CASE("names are escaped") {
    CHECK(xml_text("a<b>&\"c") == "a&lt;b&gt;&amp;&quot;c");
    CHECK(xml_text("\x01") == "\uFFFD");
    std::string vehicle = test::two_panels;
    vehicle.replace(vehicle.find("Small van"), 9, "'<Van> & \"co\"'");
    CHECK(well_formed(to_svg(test::sheet(vehicle, test::plain_film))) > 0);
}

// The page says in mm how large it is, and one unit of its coordinates is one of those mm
// (SVG 2, Coordinate systems: width and height against the viewBox).
TEST_CASE("a millimeter is a millimeter") {
    const std::string svg = to_svg(test::sheet(test::two_panels, test::plain_film));
    const auto value = [&](const std::string& name) {
        const std::size_t begin = svg.find(name + "=\"") + name.size() + 2;
        return svg.substr(begin, svg.find('"', begin) - begin);
    };
    CHECK(value("viewBox") == "0 0 " + value(" width").substr(0, value(" width").size() - 2) + " " +
                                  value(" height").substr(0, value(" height").size() - 2));
    CHECK(value(" width").substr(value(" width").size() - 2) == "mm");
    // The roof's rectangle: its wrapped width across the roll, 1450.4 mm and two margins of at
    // least 15 mm, in whole millimetres of the ruler.
    CHECK(svg.find("width=\"2185\" height=\"1524\"") != std::string::npos);
}

TEST_CASE("a label goes where its box lies wholly inside") {
    const LabelSpace space(square(100), {{{40, 40}, {60, 40}, {60, 60}, {40, 60}}});
    const auto box = space.room_for(30, 30);
    REQUIRE(box);
    CHECK(box->x >= 0);
    CHECK(box->x + box->width <= 100);
    CHECK_FALSE(box->overlaps({40, 40, 20, 20}));
    CHECK_FALSE(space.room_for(70, 70));
    CHECK_FALSE(LabelSpace(square(10), {}).room_for(11, 1));
}

TEST_CASE("a label avoids the notch of a horseshoe") {
    const draw::Ring horseshoe{{0, 0},   {100, 0}, {100, 100}, {80, 100},
                               {80, 20}, {20, 20}, {20, 100},  {0, 100}};
    const LabelSpace space(horseshoe, {});
    const auto box = space.room_for(15, 60);
    REQUIRE(box);
    CHECK((box->x + box->width <= 20 || box->x >= 80));
    CHECK_FALSE(space.room_for(30, 30));
}

// Once a number stood in the middle of a ring whose hole is cut at the table: the hole's rims, of
// the blank and of what stays on, lie in one another.
TEST_CASE("a label stays out of a hole within a hole") {
    const draw::Ring rim{{30, 30}, {70, 30}, {70, 70}, {30, 70}};
    const draw::Ring hole{{34, 34}, {66, 34}, {66, 66}, {34, 66}};
    const LabelSpace space(square(100), {rim, hole});
    const auto box = space.room_for(12, 12);
    REQUIRE(box);
    CHECK_FALSE(box->overlaps({30, 30, 40, 40}));
    CHECK_FALSE(draw::Box{30, 30, 40, 40}.holds({space.middle().x, space.middle().y, 0, 0}));
}

TEST_CASE("a piece too small for its name keeps its number, one too small for that has none") {
    const PieceLabel label{"7", {"front door, left", "1000 × 600"}, 0};
    const auto large = set(label, square(900));
    REQUIRE(large);
    CHECK(large->form != LabelForm::number_only);
    const auto small = set(label, square(80));
    REQUIRE(small);
    CHECK(small->form == LabelForm::number_only);
    CHECK_FALSE(set(label, square(20)));
    CHECK(svg_of(*large).find("front door, left") != std::string::npos);
    CHECK(svg_of(*small).find("front door") == std::string::npos);
}

TEST_CASE("arrows turn against the clock on a page whose y runs down") {
    CHECK(svg_arrow(0, 0, 10, 0).find("rotate") == std::string::npos);
    CHECK(svg_arrow(0, 0, 10, 90).find("rotate(-90)") != std::string::npos);
}

TEST_CASE("a number that does not fit what stays on goes on the piece as cut, else on a leader") {
    const std::string tiny =
        "vehicle: Tiny\npanels:\n"
        "  dot: {size: [6, 6], forward: up, edges: none, allowances: {bleed: 1}}\n";
    const auto drawn = [&](CutBy by) {
        order::Request request = test::request(tiny, test::plain_film);
        request.by = by;
        return to_svg(test::sheet(std::move(request)));
    };
    const std::string with_margins = drawn(CutBy::straight);
    CHECK(count_of(with_margins, "class=\"leader\"") == 0);
    CHECK(count_of(with_margins, "class=\"plate\"") >= 1);
    CHECK(count_of(drawn(CutBy::contour), "class=\"leader\"") == 1);
}
