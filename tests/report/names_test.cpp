// SPDX-License-Identifier: MIT
// What is written on a backing: names that cannot be taken for one another, and what is done where.
#include "job.hpp"
#include "report/edges_text.hpp"
#include "report/lists.hpp"
#include "report/words.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace pelt;
using namespace pelt::report;

namespace {

std::multiset<std::string> names_of(const Sheet& sheet) {
    std::multiset<std::string> names;
    for (const PlacedPiece& p : pieces_by_number(sheet.plan))
        names.insert(full_label_of(sheet.plan.job(), p.id));
    return names;
}

} // namespace

TEST_CASE("two faces are called outer and inner, however often the job is done") {
    order::Request request = test::request(
        "vehicle: Wing\npanels:\n"
        "  upright: {sides: both, faces: 2, size: [300, 200], forward: left, edges: none}\n",
        test::plain_film);
    CHECK(names_of(test::sheet(request)) ==
          std::multiset<std::string>{"upright, inner face, left", "upright, inner face, right",
                                     "upright, outer face, left", "upright, outer face, right"});
    request.times = 2;
    const std::multiset<std::string> names = names_of(test::sheet(request));
    CHECK(names.size() == 8);
    CHECK(names.count("upright, inner face, no. 2, left") == 1);
    CHECK(names.count("upright, outer face, no. 1, right") == 1);
}

TEST_CASE("pieces of a divided panel say where they lie") {
    // By hand: on a tailgate, seen from behind, the vehicle's left is the drawing's; on a front
    // bumper it is the other way round. A left flank has its nose on the left.
    const Sheet sheet =
        test::sheet("vehicle: Halves\npanels:\n"
                    "  tailgate: {size: [900, 400], forward: up, edges: none,\n"
                    "             seam lines: [{line: [[300, -10], [300, 410]], use: always}]}\n"
                    "  nose: {size: [900, 410], forward: down, edges: none,\n"
                    "         seam lines: [{line: [[300, -10], [300, 420]], use: always}]}\n"
                    "  hood: {size: [900, 420], forward: up, edges: none,\n"
                    "         seam lines: [{line: [[-10, 300], [910, 300]], use: always}]}\n"
                    "  flank: {sides: both, size: [900, 430], forward: left, edges: none,\n"
                    "          seam lines: [{line: [[-10, 300], [910, 300]], use: always}]}\n",
                    test::plain_film);
    const Measures measures(Unit::mm);
    for (const PlacedPiece& p : pieces_by_number(sheet.plan)) {
        const std::string name = label_of(sheet.plan.job(), p.id);
        CAPTURE(name);
        const Box box = p.finished_box();
        const std::string& panel = p.panel.name;
        const auto has = [&](const char* half) { return name.find(half) != std::string::npos; };
        // The smaller part is 300 wide or 100 to 130 high, laps not counted.
        const bool broad = panel == "tailgate" || panel == "nose";
        const bool small = std::min(box.along(), box.across()) < (broad ? 350 : 150) * um_per_mm;
        if (panel == "tailgate")
            CHECK(has(small ? "(left)" : "(right)"));
        if (panel == "nose")
            CHECK(has(small ? "(right)" : "(left)"));
        if (panel == "hood")
            CHECK(has(small ? "(front)" : "(rear)"));
        if (panel == "flank")
            CHECK(has(small ? "(upper)" : "(lower)"));
    }
}

TEST_CASE("a roof that is drawn lengthwise has the vehicle's left and right, front and rear") {
    const Sheet sheet = test::sheet(
        "vehicle: Roof\npanels:\n"
        "  roof: {size: [1500, 900], forward: left,\n"
        "         edges: {top: {wrap: 5}, bottom: {wrap: 6}, left: {wrap: 7}, right: {wrap: 8}}}\n",
        test::plain_film);
    const auto pieces = pieces_by_number(sheet.plan);
    REQUIRE(pieces.size() == 1);
    CHECK(edges_text(sheet.plan.job(), pieces.front(), Measures(Unit::mm)) ==
          "tuck 8 rear, 7 front, 6 left, 5 right");
}

TEST_CASE("openings are told with what is done there, on the piece that they lie on") {
    order::Request request =
        test::request("vehicle: Holes\npanels:\n"
                      "  flank:\n"
                      "    sides: left\n"
                      "    size: [1200, 500]\n"
                      "    edges: none\n"
                      "    seam lines: [{line: [[600, -10], [600, 510]], use: always}]\n"
                      "    openings:\n"
                      "      lamp: {outline: [[100, 100], [200, 100], [150, 200]], wrap: 9}\n"
                      "      flap: {outline: [[800, 100], [900, 100], [850, 200]], cut: table,\n"
                      "             wrap: 4}\n"
                      "      grip: {outline: [[1000, 300], [1100, 300], [1050, 400]],\n"
                      "             behind: grip part}\n"
                      "hardware:\n  grip part: {tool: driver, minutes: 5, clips: 0}\n",
                      test::priced_film);
    const auto texts = [&] {
        std::set<std::string> out;
        const Sheet sheet = test::sheet(request);
        for (const PlacedPiece& p : pieces_by_number(sheet.plan))
            out.insert(openings_text(sheet.plan.job(), p, Measures(Unit::mm)));
        return out;
    };
    CHECK(texts() == std::set<std::string>{"cut out on the vehicle: lamp (tuck 9)",
                                           "cut out at the table: flap (tuck 4); covered, cut open "
                                           "when the part goes back: grip"});
    request.leave = {"grip part"};
    CHECK(texts() == std::set<std::string>{"cut out on the vehicle: lamp (tuck 9)",
                                           "cut out on the vehicle: grip (flush 2); "
                                           "cut out at the table: flap (tuck 4)"});
}

TEST_CASE("what falls away is told as it lies in the hand, with the flaw in it") {
    Roll roll;
    roll.width = 1'524'000;
    roll.flaws = {{1'000'000, 1'100'000, {}, {}}};
    const Measures measures(Unit::mm);
    const FilmAway edge{{{0, 1'481'000}, {900'000, 1'518'000}},
                        {{0, 1'481'000}, {900'000, 1'524'000}}};
    CHECK(left_over_text(edge, roll, measures) == "left over 900 × 43");
    const FilmAway flawed{{{900'000, 6'000}, {1'200'000, 1'518'000}},
                          {{900'000, 0}, {1'200'000, 1'524'000}}};
    CHECK(left_over_text(flawed, roll, measures) == "left over 300 × 1524, flaw in it");
}
