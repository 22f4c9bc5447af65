// SPDX-License-Identifier: MIT
// Rolls drawn in characters.
#include "model/utf8.hpp"
#include "report/job.hpp"
#include "report/report.hpp"
#include "report/roll_sketch.hpp"
#include "report/roll_text.hpp"

#include <doctest/doctest.h>

#include <sstream>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::report;

namespace {

DrawnPiece rectangle(Um x, Um y, Um along, Um across, std::vector<std::string> labels,
                     Tint tint = Tint::plain) {
    return {{{{x, y}, {x + along, y}, {x + along, y + across}, {x, y + across}}, {}},
            std::move(labels),
            tint};
}

/// A roll of a metre and a half in width; three pieces, one of them a sliver.
RollSketch small_roll() {
    RollSketch roll;
    roll.width = 1'500'000;
    roll.length = 3'000'000;
    roll.pieces = {
        rectangle(0, 0, 2'000'000, 800'000, {"1 front door, left", "1 left", "1"}, Tint::left),
        rectangle(0, 800'000, 700'000, 700'000, {"2 front door, right", "2 right", "2"},
                  Tint::right),
        rectangle(2'900'000, 0, 100'000, 100'000, {"3"})};
    roll.flaws = {{2'200'000, 2'600'000, {}, {}}};
    roll.tick = 1'000'000;
    roll.ticks = {"0", "1 m", "2 m", "3 m"};
    return roll;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> out;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);)
        out.push_back(line);
    return out;
}

} // namespace

TEST_CASE("a short roll fills the page: frames, words, a flaw, distances, and what is too small") {
    CHECK(roll_text(small_roll(), {60, true, true, false}) ==
          "  +------------+---------------------------+-------+------+\n"
          "  |            |...........................|#######|......|\n"
          "  |            |...........................|#######|......|\n"
          "  |            |...........................|#######|......|\n"
          "  |  2 right   |...........................|#######|......|\n"
          "  |            |...........................|#######|......|\n"
          "  |            |...........................|#######|......|\n"
          "  +------------+-----------------------+...|#######|......|\n"
          "  |                                    |...|#######|......|\n"
          "  |                                    |...|#######|......|\n"
          "  |                                    |...|#######|......|\n"
          "  |         1 front door, left         |...|#######|......|\n"
          "  |                                    |...|#######|......|\n"
          "  |                                    |...|#######|....+-+\n"
          "  +------------------------------------+---+-------+----+-+\n"
          "  '0                '1 m               '2 m\n"
          "  Too small for their numbers here: 3.\n");
}

TEST_CASE("lines keep to the page, and color adds nothing but color") {
    for (const int width : {60, 80, 120}) {
        const std::string text = roll_text(small_roll(), {width, false, true, false});
        for (const std::string& line : lines_of(text))
            CHECK(display_width(line) <= width);
        std::string coloured = roll_text(small_roll(), {width, false, true, true});
        CHECK(coloured.find("\x1b[30;48;5;153m") != std::string::npos);
        CHECK(coloured.find("\x1b[30;48;5;222m") != std::string::npos);
        for (std::size_t at = coloured.find('\x1b'); at != std::string::npos;
             at = coloured.find('\x1b', at))
            coloured.erase(at, coloured.find('m', at) - at + 1);
        CHECK(lines_of(coloured).size() == lines_of(text).size());
    }
}

TEST_CASE("a roll for a fleet is not drawn on a terminal") {
    RollSketch roll = small_roll();
    roll.length = 200'000'000;
    CHECK(roll_text(roll, {80, false, true, false}) ==
          "  Too long to be drawn here; --format svg draws it.\n");
}

TEST_CASE("drawings are for terminals only") {
    const Document document{small_roll()};
    CHECK(to_text(document, {}).empty());
    CHECK(to_markdown(document).empty());
    TextStyle style;
    style.on_a_terminal = true;
    CHECK_FALSE(to_text(document, style).empty());
}
