// SPDX-License-Identifier: MIT
#include "job.hpp"
#include "model/utf8.hpp"
#include "report/facts.hpp"
#include "report/figures.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <sstream>
#include <string>
#include <vector>

using namespace pelt;

namespace {

std::vector<std::string> lines_of(const std::string& text) {
    std::istringstream in(text);
    std::vector<std::string> lines;
    for (std::string line; std::getline(in, line);)
        lines.push_back(line);
    return lines;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

report::Sheet two_panels() {
    return test::sheet(test::two_panels, test::plain_film);
}

} // namespace

TEST_CASE("the sheet goes from the order down to the cautions") {
    const std::string text = report::to_table(two_panels());
    std::size_t at = 0;
    for (const char* part : {"Small van", "DEMONSTRATION", "\nORDER\n",
                             "\nBEFORE YOU CUT\n", "\nWHAT THIS ASSUMES\n", "\nTHE FILM ON THE TABLE\n",
                             "\nIN THE ORDER OF LAYING\n", "\nCUTS, IN THE ORDER MADE\n",
                             "\nPIECES BY NUMBER\n", "\nFIGURES\n", "\nCAUTIONS\n"}) {
        CAPTURE(part);
        at = text.find(part, at);
        REQUIRE(at != std::string::npos);
    }
    CHECK(has(text, "see last page"));
    CHECK(has(text, "No spare included"));
    CHECK(has(text, "one length, one batch"));
    CHECK(has(text, "No layout can be shorter than"));
}

TEST_CASE("no line is wider than the page, at any width that is offered") {
    report::Sheet sheet = two_panels();
    for (const Unit unit : {Unit::mm, Unit::in}) {
        sheet.unit = unit;
        for (const int width : {60, 72, 80, 100, 120})
            for (const std::string& line : lines_of(report::to_table(sheet, {width, false}))) {
                CAPTURE(width);
                CAPTURE(line);
                CHECK(display_width(line) <= width);
                CHECK((line.empty() || line.back() != ' '));
            }
    }
}

TEST_CASE("what is not known is said in words") {
    const std::string text = report::to_table(two_panels());
    CHECK(has(text, "Stretch not checked"));
    CHECK(has(text, "Price: not known"));
    CHECK_FALSE(has(text, "null"));
    CHECK_FALSE(has(text, "nan"));
}

TEST_CASE("one system of units on a sheet") {
    report::Sheet sheet = two_panels();
    sheet.unit = Unit::yd;
    const std::string text = report::to_table(sheet);
    CHECK_FALSE(has(text, " mm"));
    CHECK_FALSE(has(text, " m "));
    CHECK_FALSE(has(text, "m²"));
    CHECK(has(text, " yd"));
    CHECK(has(text, "sq ft"));
}

TEST_CASE("the order reads back the price that was paid") {
    const std::string text = report::to_table(test::sheet(test::two_panels, test::priced_film));
    CHECK(has(text, "3 m × 1524 mm, one length, one batch"));
    CHECK(has(text, "Price: 3 × 1 m at 14.20 EUR = 42.60 EUR."));
    CHECK(has(text, "Left over: "));
}

TEST_CASE("a file that is no demonstration is not called one") {
    std::string vehicle = test::two_panels;
    std::string film = test::plain_film;
    for (std::string* text : {&vehicle, &film})
        text->erase(text->find("demonstration: yes\n"), 19);
    CHECK_FALSE(has(report::to_table(test::sheet(vehicle, film)), "DEMONSTRATION"));
}

TEST_CASE("Markdown says what the table says") {
    const report::Sheet sheet = two_panels();
    const std::string text = report::to_markdown(sheet);
    CHECK(text.rfind("# Small van\n", 0) == 0);
    for (const char* part : {"## ORDER", "| done | no. | panel |", "## CAUTIONS"})
        CHECK(has(text, part));
}

TEST_CASE("the areas shown add up as they are shown") {
    const std::vector<report::Sheet> sheets{test::sheet(test::whole_van, test::priced_film),
                                            two_panels()};
    for (const report::Sheet& sheet : sheets)
        for (const Unit unit : {Unit::mm, Unit::ft}) {
            const report::Table table = report::area_table(sheet, report::Measures(unit));
            REQUIRE(table.rows.size() == 5);
            for (const std::size_t column : {std::size_t{1}, std::size_t{2}}) {
                const auto shown = [&](std::size_t row) {
                    return std::lround(100 * std::stod(table.rows[row][column]));
                };
                CHECK(shown(0) + shown(1) + shown(2) == shown(3));
                CHECK(shown(1) + shown(2) == shown(4));
            }
        }
}

TEST_CASE("what is needed and what is left over make what is ordered") {
    const report::Sheet sheet = test::sheet(test::whole_van, test::priced_film);
    const report::Measures mm(Unit::mm);
    const Length needed = Length::from_um(report::new_length_of(sheet.plan));
    const Length ordered = sheet.order.length();
    const double sum =
        std::stod(mm.film(needed)) + std::stod(mm.film(ordered - needed, report::Rounding::down));
    CHECK(std::abs(sum - std::stod(mm.film(ordered))) < 1e-9);
}
