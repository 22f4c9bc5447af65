// SPDX-License-Identifier: MIT
#include "job.hpp"
#include "picture_check.hpp"
#include "report/draw/roll.hpp"
#include "report/edges_text.hpp"
#include "report/lists.hpp"
#include "report/paper/canvas.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/pages.hpp"
#include "report/paper/strips.hpp"
#include "report/paper/table.hpp"
#include "report/paper/type_sizes.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::report;
using namespace pelt::report::paper;

namespace {

/// Every letter half as wide as it is high, so that widths can be reckoned by hand.
class HalfLetters : public draw::Letters {
public:
    double width_em(std::string_view text, draw::Face) const override {
        return 0.5 * static_cast<double>(text.size());
    }
};

std::vector<std::string> words_of(const draw::Picture& picture) {
    std::vector<std::string> out;
    for (const draw::Mark& mark : picture.marks)
        if (const auto* text = std::get_if<draw::Text>(&mark))
            out.push_back(text->words);
    return out;
}

bool says(const std::vector<draw::Picture>& pages, const std::string& text) {
    return std::any_of(pages.begin(), pages.end(), [&](const draw::Picture& page) {
        const auto words = words_of(page);
        return std::any_of(words.begin(), words.end(),
                           [&](const std::string& w) { return w.find(text) != std::string::npos; });
    });
}

const std::string side_panels =
    "vehicle: Sides\n"
    "panels:\n"
    "  door:\n"
    "    sides: both\n"
    "    outline: [[0, 0], [1000, 0], [1000, 600], "
    "{to: [0, 600], name: window seal}]\n"
    "    edges: {all: {wrap: 12}, bottom: {wrap: 28}, left: {wrap: 15}, "
    "window seal: {stop: 3}}\n"
    "  hood: {size: [900, 700], forward: up, edges: {all: {wrap: 10}}}\n"
    "  bumper: {size: [900, 300], forward: down, edges: none}\n"
    "  wing: {faces: 2, size: [800, 200], forward: right, edges: none}\n";

const PlacedPiece& piece_of(const std::vector<PlacedPiece>& pieces, const std::string& panel,
                            Side side, int copy = 1) {
    for (const PlacedPiece& p : pieces)
        if (p.panel.name == panel && p.id.side == side && p.id.copy == copy)
            return p;
    throw std::runtime_error("no such piece: " + panel);
}

std::string edges_of(const Sheet& sheet, const std::string& panel, Side side) {
    const auto pieces = pieces_by_number(sheet.plan);
    return edges_text(sheet.plan.job(), piece_of(pieces, panel, side), Measures(Unit::mm));
}

} // namespace

TEST_CASE("letters on paper are measured, and none is wider than a drawing for any font allows") {
    const PaperLetters paper;
    const draw::UnknownLetters unknown;
    // DejaVu Sans 2.37: advance widths in 2048ths of an em, from memory.
    CHECK(std::abs(paper.width_em("0", draw::Face::plain) - 1303.0 / 2048) < 0.002);
    CHECK(std::abs(paper.width_em("M", draw::Face::plain) - 1767.0 / 2048) < 0.002);
    CHECK(std::abs(paper.width_em("a b", draw::Face::plain) -
                   paper.width_em("ab", draw::Face::plain) - 651.0 / 2048) < 0.002);
    for (char c = ' '; c < '\x7f'; ++c)
        for (const draw::Face face : {draw::Face::plain, draw::Face::bold}) {
            const std::string text(3, c);
            CAPTURE(text);
            CHECK(paper.width_em(text, face) <= unknown.width_em(text, face) + 1e-9);
        }
}

TEST_CASE("a table gives way where words can, and puts boxes to tick") {
    const HalfLetters letters;
    Table table;
    table.columns = {
        {"done", Align::left, false}, {"panel", Align::left, true}, {"size", Align::right, false}};
    table.rows = {{"[  ]", "a long name of a panel that wraps", "1000"}, {"[  ]", "b", "20"}};
    const SetTable set = set_table(table, 40, 2, letters);
    REQUIRE(set.rows.size() == 2);
    CHECK(set.rows[0].height > set.rows[1].height);
    for (const draw::Picture& row : set.rows) {
        CHECK(std::count_if(row.marks.begin(), row.marks.end(), [](const draw::Mark& mark) {
                  const auto* box = std::get_if<draw::Rectangle>(&mark);
                  return box != nullptr && box->look == draw::Look::tick_box;
              }) == 1);
        CHECK(test::PictureCheck(row, letters).faults().empty());
    }
    // Too narrow even so: smaller letters.
    const SetTable narrow = set_table(table, 28, 4, letters);
    CHECK(test::PictureCheck(narrow.rows[0], letters).faults().empty());
}

TEST_CASE("a long table runs over pages, each with its head") {
    const HalfLetters letters;
    Flow flow({100, 80}, 3, letters);
    Table table;
    table.columns = {{"number", Align::left, false}};
    for (int i = 0; i < 40; ++i)
        table.rows.push_back({std::to_string(i)});
    flow.add(Block{table});
    std::vector<draw::Picture> pages = std::move(flow).pages();
    CHECK(pages.size() > 3);
    std::size_t rows = 0;
    for (const draw::Picture& page : pages) {
        const auto words = words_of(page);
        CHECK(words.front() == "number");
        rows += words.size() - 1;
        CHECK(test::PictureCheck(page, letters).faults().empty());
    }
    CHECK(rows == 40);
    add_feet(pages, "foot", letters);
    CHECK(words_of(pages[1]).back() == "page 2 of " + std::to_string(pages.size()));
}

namespace {

/// Roll by roll from its free end to where its last piece ends.
void check_end_to_end(const Sheet& sheet, const std::vector<Strip>& strips) {
    const std::vector<UsedRoll>& rolls = sheet.plan.layout().rolls;
    std::vector<Um> ends(rolls.size(), 0);
    for (const Strip& strip : strips) {
        CHECK(strip.from == ends.at(strip.roll));
        CHECK(strip.to > strip.from);
        ends.at(strip.roll) = strip.to;
    }
    for (std::size_t i = 0; i < rolls.size(); ++i)
        CHECK(ends[i] == rolls[i].length);
}

} // namespace

TEST_CASE("strips hold every cut and every piece of a roll once, end to end") {
    const Sheet sheet = test::sheet(test::whole_van, test::priced_film);
    const auto pieces = pieces_by_number(sheet.plan);
    const std::vector<Strip> strips = strips_of(sheet.plan, pieces);
    check_end_to_end(sheet, strips);
    int cut = 0;
    std::size_t inside = 0;
    for (const Strip& strip : strips) {
        if (strip.from == 0)
            cut = 0;
        for (const CutStep& step : strip.steps)
            CHECK(step.number == ++cut);
        for (const PlacedPiece& p : pieces)
            if (p.roll == strip.roll && p.cut_box().low.x >= strip.from &&
                p.cut_box().high.x <= strip.to)
                ++inside;
    }
    CHECK(inside == pieces.size());
}

TEST_CASE("strips of contour cuts cover the roll, none longer than two meters") {
    order::Request request = test::request(test::whole_van, test::priced_film);
    request.by = CutBy::contour;
    const Sheet sheet = test::sheet(std::move(request));
    const std::vector<Strip> strips = strips_of(sheet.plan, pieces_by_number(sheet.plan));
    check_end_to_end(sheet, strips);
    CHECK(strips.size() > sheet.plan.layout().rolls.size());
    for (const Strip& strip : strips) {
        CHECK(strip.to - strip.from <= 2'000 * um_per_mm);
        CHECK(strip.steps.empty());
    }
}

TEST_CASE("strips go into rows in order, and rows are as short as so many allow") {
    const auto strip = [](Um from, Um to) { return Strip{0, from, to, {}}; };
    const std::vector<Strip> strips{strip(0, 4), strip(4, 6), strip(6, 9), strip(9, 10)};
    CHECK(row_length(strips, 1) == 10);
    CHECK(row_length(strips, 2) == 6);
    CHECK(row_length(strips, 3) == 4);
    CHECK(row_length(strips, 9) == 4);
    const std::vector<Strip> rows = rows_within(strips, 6);
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].to == 6);
    CHECK(rows[1].from == 6);
    CHECK(rows[1].to == 10);
}

TEST_CASE(
    "what is left on the roll after a cut across it is what was bought less where it is cut") {
    const Sheet sheet = test::sheet(test::whole_van, test::priced_film);
    const Measures measures(Unit::mm);
    const auto pieces = pieces_by_number(sheet.plan);
    const std::vector<CutStep> steps = cut_steps(sheet.plan, pieces, 0);
    const Table table = cuts_to_tick(sheet, 0, steps, measures);
    REQUIRE(table.rows.size() == steps.size());
    int across = 0;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const bool off = steps[i].across && steps[i].of == CutStep::Divides::roll;
        CHECK(table.rows[i].front() == "[  ]");
        const std::string left = "roll " + measures.film(sheet.order.lines.front().length() -
                                                             Length::from_um(steps[i].running),
                                                         Rounding::down);
        const std::string& free = table.rows[i].back();
        const bool says_it = free.size() >= left.size() &&
                             free.compare(free.size() - left.size(), left.size(), left) == 0;
        CHECK(says_it == off);
        across += off ? 1 : 0;
    }
    CHECK(across >= 2);
}

TEST_CASE("edges are called as they lie on the vehicle") {
    const Sheet sheet = test::sheet(side_panels, test::plain_film);
    const auto text = [&](const std::string& panel, Side side) {
        return edges_of(sheet, panel, side);
    };
    // The door is drawn as the left one, the nose on the left: the drawing's left edge is the
    // front one on either side.
    for (const Side side : {Side::left, Side::right})
        CHECK(text("door", side) ==
              "tuck 28 bottom, 15 front, 12 rear; ends short by 3 window seal");
    CHECK(text("hood", Side::centre) == "tuck 10 all round");
    CHECK(text("bumper", Side::centre) == "no tuck");
}

TEST_CASE("left and right are the vehicle's: on right twins, and on panels seen from before it") {
    const Sheet sheet = test::sheet("vehicle: Ends\npanels:\n"
                                    "  tail pillar: {sides: both, size: [200, 400], forward: up,\n"
                                    "                edges: {all: {wrap: 12}, left: {wrap: 6}}}\n"
                                    "  nose: {size: [900, 300], forward: down,\n"
                                    "         edges: {all: {wrap: 12}, left: {wrap: 6}}}\n"
                                    "  lid: {size: [900, 350], forward: up,\n"
                                    "        edges: {all: {wrap: 12}, left: {wrap: 6}}}\n",
                                    test::plain_film);
    const auto text = [&](const std::string& panel, Side side) {
        return edges_of(sheet, panel, side);
    };
    CHECK(text("tail pillar", Side::left) == "tuck 6 left, 12 elsewhere");
    CHECK(text("tail pillar", Side::right) == "tuck 6 right, 12 elsewhere");
    CHECK(text("nose", Side::centre) == "tuck 6 right, 12 elsewhere");
    CHECK(text("lid", Side::centre) == "tuck 6 left, 12 elsewhere");
}

TEST_CASE("a part of a panel has the edges that lie on it, on either side, and no other's lap") {
    // 2,000 long, the seam at 700: what is left of it is drawn in front on a left side.
    const Sheet sheet =
        test::sheet("vehicle: Parts\npanels:\n"
                    "  flank: {sides: both, size: [2000, 600], forward: left,\n"
                    "          seam lines: [{line: [[700, -10], [700, 610]], use: always}],\n"
                    "          edges: {all: {wrap: 12}, left: {wrap: 20}, right: {stop: 4}}}\n",
                    test::plain_film);
    const auto pieces = pieces_by_number(sheet.plan);
    const Measures measures(Unit::mm);
    int seen = 0;
    for (const PlacedPiece& p : pieces) {
        const std::string text = edges_text(sheet.plan.job(), p, measures);
        const bool shorter = p.finished_box().along() < 1000 * um_per_mm;
        CHECK(text == (shorter ? "tuck 20 front, 12 bottom + top, but for the seam"
                               : "tuck 12 bottom + top; ends short by 4 rear, but for the seam"));
        ++seen;
    }
    CHECK(seen == 4);
}

TEST_CASE("film that goes flush under what stays on is not called a tuck") {
    order::Request request =
        test::request("vehicle: Left on\npanels:\n"
                      "  door: {sides: left, size: [900, 600], forward: left,\n"
                      "         edges: {all: {wrap: 12}, top: {behind: trim}}}\n"
                      "hardware:\n  trim: {tool: trim tool, minutes: 5, clips: 4}\n",
                      test::priced_film);
    request.leave = {"trim"};
    const Sheet sheet = test::sheet(std::move(request));
    const auto pieces = pieces_by_number(sheet.plan);
    REQUIRE(pieces.size() == 1);
    CHECK(edges_text(sheet.plan.job(), pieces.front(), Measures(Unit::mm)) ==
          "tuck 12 bottom + rear + front; flush under what stays on 2 top");
}

TEST_CASE("which edge is up, as the piece lies") {
    const Sheet sheet = test::sheet(side_panels, test::plain_film);
    const auto pieces = pieces_by_number(sheet.plan);
    const auto up = [&](const std::string& panel, Side side, int copy = 1) {
        const PlacedPiece& p = piece_of(pieces, panel, side, copy);
        REQUIRE(p.turn.millidegrees == 0); // one-way film
        return upper_edge_of(sheet.plan.job(), p);
    };
    // By hand: the film's arrow to the right, face up. A left door whose nose points right stands
    // on its head, a right one stands upright.
    CHECK(up("door", Side::left) == "↓");
    CHECK(up("door", Side::right) == "↑");
    CHECK(up("hood", Side::centre) == "→");
    CHECK(up("bumper", Side::centre) == "←");
    CHECK(up("wing", Side::centre, 1) == "↑");
    CHECK(up("wing", Side::centre, 2) == "↓");
}

// By the definition of a seam: the upper piece ends at the line, the under piece runs the overlap
// past it, so either ends the overlap inside the other's side.
TEST_CASE("the lap is drawn on both parts, the overlap from the side where they meet") {
    const Sheet sheet = test::sheet(test::whole_van, test::priced_film);
    const auto pieces = pieces_by_number(sheet.plan);
    REQUIRE(!sheet.plan.job().seams.empty());
    const draw::Picture roll = draw::roll_picture(
        sheet, pieces, 0, Measures(Unit::mm),
        draw::in_true_size(sheet.plan.layout().rolls.front().length), draw::UnknownLetters());
    const draw::Path* finished = nullptr;
    int laps = 0;
    for (const draw::Mark& mark : roll.marks) {
        const auto* path = std::get_if<draw::Path>(&mark);
        if (path != nullptr && path->look == draw::Look::wrapped)
            finished = path;
        if (path == nullptr || path->look != draw::Look::lap)
            continue;
        REQUIRE(finished != nullptr);
        ++laps;
        const auto [left, right] =
            std::minmax_element(finished->rings[0].begin(), finished->rings[0].end(),
                                [](const auto& a, const auto& b) { return a.x < b.x; });
        const auto [top, bottom] =
            std::minmax_element(finished->rings[0].begin(), finished->rings[0].end(),
                                [](const auto& a, const auto& b) { return a.y < b.y; });
        const draw::Point& a = path->rings[0][0];
        const draw::Point& b = path->rings[0][1];
        const double from_side = a.x == b.x ? std::min(a.x - left->x, right->x - a.x)
                                            : std::min(a.y - top->y, bottom->y - a.y);
        CHECK(std::abs(from_side - 10) < 0.01);
    }
    // Each seam on the piece that lies over and on the one under it.
    CHECK(laps >= 2 * static_cast<int>(sheet.plan.job().seams.size()));
    CHECK(!sheet.plan.job().seams.empty());
}

TEST_CASE("a sheet says what a person at the table needs") {
    const Sheet sheet = test::sheet(test::whole_van, test::priced_film);
    const PaperLetters letters;
    const auto pages = sheet_pages(sheet, Paper::a4, letters);
    for (const std::string text :
         {"ORDER", "WHAT THIS ASSUMES", "THE FILM ON THE TABLE", "STRIPS 1 TO ",
          "write on the backing", "LEFT", "RIGHT", "laps over piece 1, lap 10 mm, laid after it",
          "lies under piece 2, lap 10 mm, laid before it", "IN THE ORDER OF LAYING", "CAUTIONS",
          "DEMONSTRATION", "page 1 of "}) {
        CAPTURE(text);
        CHECK(says(pages, text));
    }
    for (const draw::Picture& page : pages) {
        const auto faults = test::PictureCheck(page, letters).faults();
        CHECK(faults == std::vector<std::string>{});
        for (const draw::Mark& mark : page.marks)
            if (const auto* words = std::get_if<draw::Text>(&mark)) {
                CAPTURE(words->words);
                CHECK(words->size >= smallest_type - 1e-9);
            }
    }
    CHECK(to_pdf(sheet, Paper::a4) == to_pdf(sheet, Paper::a4));
}

TEST_CASE("names in other scripts are drawn and found, if a font of the machine has them or not") {
    std::string vehicle = test::two_panels;
    vehicle.replace(vehicle.find("hood"), 4, "\u0434\u0432\u0435\u0440\u044c \u00e9t\u00e9");
    const std::string pdf = to_pdf(test::sheet(vehicle, test::plain_film), Paper::letter);
    CHECK(pdf.substr(0, 5) == "%PDF-");
}

TEST_CASE("a pattern is tiled into pages that carry its number, marks and a line of 100 mm") {
    const Sheet sheet = test::sheet(test::two_panels, test::plain_film);
    const PaperLetters letters;
    const auto pages = pattern_pages(sheet, Paper::a4, letters);
    CHECK(pages.size() > 20);
    std::size_t tiles = 0;
    for (const draw::Picture& page : pages) {
        int marks = 0;
        for (const draw::Mark& mark : page.marks)
            if (const auto* circle = std::get_if<draw::Circle>(&mark))
                marks += circle->look == draw::Look::tick ? 1 : 0;
        if (marks == 0)
            continue; // how the tiles go together
        CHECK(marks == 4);
        const auto control =
            std::find_if(page.marks.begin(), page.marks.end(), [](const draw::Mark& mark) {
                const auto* path = std::get_if<draw::Path>(&mark);
                return path != nullptr && path->look == draw::Look::control_line;
            });
        REQUIRE(control != page.marks.end());
        const draw::Ring& line = std::get<draw::Path>(*control).rings.front();
        CHECK(std::abs(line[1].x - line[0].x - 100) < 1e-9);
        ++tiles;
    }
    CHECK(tiles + 2 == pages.size());
    for (const draw::Picture& page : pages) {
        const auto words = words_of(page);
        std::string text;
        for (const std::string& word : words)
            text += word + " ";
        CHECK((text.find("DEMONSTRATION") != std::string::npos) ==
              is_demonstration(sheet.plan.job()));
        CHECK((text.find("film face up") != std::string::npos ||
               text.find("on the backing it would be mirrored") != std::string::npos));
    }
}
