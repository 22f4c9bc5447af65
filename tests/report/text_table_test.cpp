// SPDX-License-Identifier: MIT
#include "model/utf8.hpp"
#include "report/document.hpp"
#include "report/text_table.hpp"

#include <doctest/doctest.h>

#include <sstream>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::report;

namespace {

Table names_and_numbers() {
    return {{{"panel", Align::left, true}, {"size", Align::right, false}},
            {{"hood", "5"}, {"front door with a very long name of its own", "1234 × 5678"}}};
}

int widest_line(const std::string& text) {
    std::istringstream lines(text);
    int widest = 0;
    for (std::string line; std::getline(lines, line);)
        widest = std::max(widest, display_width(line));
    return widest;
}

} // namespace

TEST_CASE("numbers stand to the right and names wrap") {
    CHECK(table_text(names_and_numbers(), 30) == "panel                     size\n"
                                                 "-----------------  -----------\n"
                                                 "hood                         5\n"
                                                 "front door with a  1234 × 5678\n"
                                                 "very long name of\n"
                                                 "its own\n");
}

TEST_CASE("a table takes no more room than it is given, and no more than it needs") {
    CHECK(widest_line(table_text(names_and_numbers(), 120)) == 43 + 2 + 11);
    for (int width = 25; width < 60; ++width) {
        CAPTURE(width);
        CHECK(widest_line(table_text(names_and_numbers(), width)) <= width);
    }
}

TEST_CASE("wide characters count twice") {
    const Table table{{{"n", Align::left, true}, {"x", Align::right, false}},
                      {{"車体", "1"}, {"ab", "2"}}};
    CHECK(table_text(table, 80) == "n     x\n----  -\n車体  1\nab    2\n");
}

TEST_CASE("lines break between words, and a number keeps what belongs to it") {
    CHECK(wrapped_lines("cut across at 1480 mm", 14) ==
          std::vector<std::string>{"cut across at", "1480 mm"});
    CHECK(wrapped_lines("cut across at 1480 mm,", 18) ==
          std::vector<std::string>{"cut across at", "1480 mm,"});
    CHECK(wrapped_lines("left over 60 1/4 × 12 1/4", 18) ==
          std::vector<std::string>{"left over", "60 1/4 × 12 1/4"});
    CHECK(wrapped_lines("", 10) == std::vector<std::string>{""});
}

TEST_CASE("a word that is too long is broken, not lost") {
    CHECK(wrapped_lines("abcdefghij", 4) == std::vector<std::string>{"abcd", "efgh", "ij"});
    CHECK(wrapped_lines("Türöffnung", 3) == std::vector<std::string>{"Tür", "öff", "nun", "g"});
}

TEST_CASE("Markdown tables escape their pipes") {
    const Table table{{{"a", Align::left, true}, {"b", Align::right, false}}, {{"x|y", "1"}}};
    CHECK(table_markdown(table) == "| a | b |\n| --- | ---: |\n| x\\|y | 1 |\n");
}

TEST_CASE("our own signs can be spelt in ASCII, column for column") {
    const Document document{Title{"Van", "DEMONSTRATION"}, Line{"1 × 2 m² · → –"}};
    const std::string ascii = to_text(document, {80, true});
    for (const char c : ascii)
        CHECK(static_cast<unsigned char>(c) < 0x80);
    CHECK(widest_line(ascii) == widest_line(to_text(document, {80, false})));
}

TEST_CASE("Markdown escapes what a reader would take for markup") {
    CHECK(to_markdown({Line{"a_b *c* [d] <e>"}}) == "\na\\_b \\*c\\* \\[d\\] \\<e\\>\n");
    // Struck out text (GitHub Flavored Markdown 6.5) and entities (CommonMark 6.2), from memory.
    CHECK(to_markdown({Line{"~~a~~ &lt;"}}) == "\n\\~\\~a\\~\\~ \\&lt;\n");
}
