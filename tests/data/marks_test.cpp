// SPDX-License-Identifier: MIT
// How much the sheets of shipped vehicles ask of whoever reads them.
#include "model/utf8.hpp"
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace pelt::data_test {
namespace {

std::string without_markup(std::string text) {
    const std::string bold = "**!** ";
    if (text.starts_with(bold))
        text.erase(0, bold.size());
    std::erase(text, '\\');
    return text;
}

/// The items of a Markdown sheet under a heading, each on one line.
std::vector<std::string> items_under(const std::string& sheet, const std::string& heading) {
    std::vector<std::string> out;
    std::istringstream lines(sheet);
    bool inside = false;
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("#"))
            inside = line.find(heading) != std::string::npos;
        else if (inside && line.starts_with("- "))
            out.push_back(without_markup(line.substr(2)));
    }
    return out;
}

std::string sheet_of(const std::vector<std::string>& words) {
    std::vector<std::string> all{"cut"};
    all.insert(all.end(), words.begin(), words.end());
    all.insert(all.end(), {"--format", "markdown"});
    const support::Result result = pelt(all);
    INFO(result.errors);
    REQUIRE(result.status == 0);
    return result.output;
}

std::vector<std::string> marks_of(const std::string& sheet) {
    return items_under(sheet, "BEFORE YOU CUT");
}

/// One sentence of at most a hundred characters, the panel first, the remedy last.
void check_form(const std::string& mark) {
    CAPTURE(mark);
    CHECK(code_points(mark).size() <= 100);
    CHECK(mark.find("; ") != std::string::npos);
    CHECK(mark.back() == '.');
    CHECK(mark.find(". ") == std::string::npos);
}

TEST_CASE("marks on the demonstration hatchback are four at most") {
    for (const char* by : {"straight", "contour"}) {
        const std::size_t marks = marks_of(sheet_of({"vehicles/town-hatchback.yaml",
                                                     "films/satin-hybrid.yaml", "--by", by}))
                                      .size();
        CHECK(marks > 0);
        CHECK(marks <= 4);
    }
}

TEST_CASE("marks on a shipped vehicle with a shipped film are six at most, in their form") {
    std::size_t all = 0;
    for (const std::string& vehicle : files_of("vehicles"))
        for (const std::string& film : files_of("films")) {
            CAPTURE(vehicle);
            CAPTURE(film);
            const std::vector<std::string> marks = marks_of(sheet_of({vehicle, film}));
            CHECK(marks.size() <= 6);
            for (const std::string& mark : marks)
                check_form(mark);
            all += marks.size();
        }
    CHECK(all > 0); // else the heading is called otherwise, and nothing was looked at
}

TEST_CASE("no sentence stands twice on the sheet of a shipped vehicle") {
    for (const std::string& vehicle : files_of("vehicles")) {
        CAPTURE(vehicle);
        std::set<std::string> seen;
        std::istringstream lines(sheet_of({vehicle, "films/satin-hybrid.yaml"}));
        for (std::string line; std::getline(lines, line);) {
            const bool says = !line.empty() && line.front() != '|' && line.find(' ') != line.npos;
            CAPTURE(line);
            CHECK((!says || seen.insert(line).second));
        }
    }
}

TEST_CASE("a flat trailer with tucks has no mark") {
    const support::ScratchFolder folder;
    folder.write("trailer.yaml", "vehicle: Trailer\nunits: mm\npanels:\n"
                                 "  side wall: {sides: both, size: [3010, 1480], edges: 25}\n"
                                 "  front wall: {size: [1505, 1480], forward: down, edges: 25}\n"
                                 "  rear wall: {size: [1505, 1480], forward: up, edges: 25}\n"
                                 "  sill: {sides: both, size: [3010, 90], edges: 12}\n");
    for (const std::string& film : files_of("films")) {
        CAPTURE(film);
        CHECK(marks_of(sheet_of({folder.path() + "/trailer.yaml", film})) ==
              std::vector<std::string>{});
    }
}

} // namespace
} // namespace pelt::data_test
