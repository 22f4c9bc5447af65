// SPDX-License-Identifier: MIT
// A mark is one sentence of at most a hundred characters, the panel first, the remedy last.
#include "job.hpp"
#include "model/utf8.hpp"
#include "report/findings.hpp"
#include "report/marks.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::report;

namespace {

std::vector<std::string> sentences(const std::vector<Mark>& marks) {
    std::vector<std::string> out;
    for (const GatheredMark& mark : gathered(marks))
        out.push_back(mark.sentence());
    return out;
}

/// Every sentence of the blocks of a page that hold sentences.
std::vector<std::string> sentences_of(const Document& document) {
    std::vector<std::string> out;
    for (const Block& block : document) {
        if (const auto* items = std::get_if<Items>(&block))
            out.insert(out.end(), items->texts.begin(), items->texts.end());
        if (const auto* line = std::get_if<Line>(&block))
            out.push_back(line->text);
    }
    return out;
}

} // namespace

TEST_CASE("equal marks are gathered, those with another remedy are not") {
    CHECK(sentences({{"hood", "", "too wide", "tuck less"},
                     {"roof", "", "too wide", "tuck less"},
                     {"hood", "", "too wide", "tuck less"},
                     {"sill", "", "too wide", "fold it"},
                     {"", "", "the film is short", "buy more"}}) ==
          std::vector<std::string>{"hood, roof: too wide; tuck less.", "sill: too wide; fold it.",
                                   "The film is short; buy more."});
}

TEST_CASE("what is a panel's own stands in brackets where there is room") {
    CHECK(sentences({{"hood", "12 %", "over it", "take another"}}) ==
          std::vector<std::string>{"hood (12 %): over it; take another."});
    const std::string remedy(60, 'x');
    CHECK(sentences({{"front fender", "wheel arch", "too wide", remedy},
                     {"quarter", "wheel arch", "too wide", remedy}}) ==
          std::vector<std::string>{"front fender, quarter: too wide; " + remedy + "."});
}

TEST_CASE("no mark is longer than a hundred characters, however many or long its panels") {
    std::vector<Mark> marks;
    for (int i = 0; i < 60; ++i) {
        marks.push_back({"panel of the side no " + std::to_string(i), "an edge of it",
                         "over the film's 12 % stretch",
                         "cut in at its edges, or take softer film"});
        const std::vector<GatheredMark> all = gathered(marks);
        REQUIRE(all.size() == 1);
        CHECK(code_points(all.front().sentence()).size() <= longest_mark);
        CHECK(all.front().panels.size() == static_cast<std::size_t>(i) + 1);
        CHECK(all.front().names_all() == (i == 0));
    }
    const Mark long_name{std::string(200, 'n'), "", "over it", "take another"};
    CHECK(sentences({long_name}) == std::vector<std::string>{"1 panel: over it; take another."});
}

TEST_CASE("a mark that has no room for its panels has them all in a note") {
    std::string vehicle = "vehicle: Van\npanels:\n";
    for (int i = 0; i < 12; ++i)
        vehicle += "  curved small panel " + std::string(1, static_cast<char>('a' + i)) +
                   ": {size: [300, 250], crown: {wide: 80, high: 70}, direction: any}\n";
    const Sheet sheet = test::sheet(vehicle, test::priced_film);
    const Measures mm(Unit::mm);
    const std::vector<GatheredMark> marks = gathered(marks_of(sheet, mm));
    REQUIRE(marks.size() == 1);
    CHECK_FALSE(marks.front().names_all());
    bool found = false;
    for (const std::string& note : notes_of(sheet, mm))
        found = found || (note.find("curved small panel a, ") != std::string::npos &&
                          note.find("curved small panel l") != std::string::npos);
    CHECK(found);
}

TEST_CASE("no sentence stands twice on a sheet") {
    for (const std::string& film : {test::priced_film, test::plain_film}) {
        std::set<std::string> seen;
        for (const std::string& text : sentences_of(cut_sheet(test::sheet(test::whole_van, film)))) {
            CAPTURE(text);
            CHECK(seen.insert(text).second);
        }
    }
}
