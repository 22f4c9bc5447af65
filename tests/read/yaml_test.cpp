// SPDX-License-Identifier: MIT
// What is YAML but not what a person writes, and what is no YAML at all: a sentence each.
#include "files.hpp"
#include "read/yaml.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

namespace pelt::read_test {
namespace {

std::string faults_of(const std::string& text) {
    Faults faults;
    read::parse(file(text), faults);
    std::string out;
    for (const Fault& fault : faults)
        out += to_string(fault, false) + "\n";
    return out;
}

using Cases = std::vector<std::pair<std::string, std::string>>;

void check(const Cases& cases) {
    for (const auto& [text, sentence] : cases) {
        const auto& told_text = text;
        CAPTURE(told_text);
        CHECK(faults_of(text) == sentence + "\n");
    }
}

TEST_CASE("a tree keeps texts, order and places, columns in characters") {
    Faults faults;
    const auto root =
        read::parse(file("\u00e9: {\u00fc\u00df: \"x y\", b: [1, 2]}\nz: 5' 3\"\r\n"), faults);
    CHECK(faults.empty());
    REQUIRE(root.has_value());
    REQUIRE(root->entries.size() == 2);
    const read::Node& map = root->entries[0].value;
    CHECK(map.place.line == 1);
    CHECK(map.place.column == 4);
    CHECK(map.entries[0].key == "\u00fc\u00df");
    CHECK(map.entries[0].value.text == "x y");
    CHECK(map.entries[0].value.quoted);
    CHECK(map.entries[0].value.place.column == 9);
    CHECK(map.entries[1].value.items[1].place.column == 23);
    CHECK(root->entries[1].place.line == 2);
    CHECK(root->find("z")->text == "5' 3\"");
    CHECK(!root->find("z")->quoted);
    CHECK(root->find("nothing") == nullptr);
}

TEST_CASE("bytes that are no text") {
    using std::string_literals::operator""s;
    check({
        {"a: 1\nb: \0"s,
         "t.yaml:2:4: the file holds a zero byte: it is not text; give a text file, "
         "saved as UTF-8"},
        {"a: 1\n\u00e9\xFF: 2\n", "t.yaml:2:2: this is not UTF-8 text; save the file as UTF-8"},
        {"a: \xC0\x80\n", "t.yaml:1:4: this is not UTF-8 text; save the file as UTF-8"},
        {"\xEF\xBB\xBF"
         "a: 1\n",
         "t.yaml:1:1: the file begins with a byte order mark; save it as UTF-8 without one"},
        {"\xFF\xFE"
         "a\0"s,
         "t.yaml:1:1: the file is UTF-16 text; save it as UTF-8"},
        {"a: 1\rb: 2\r", "t.yaml:1:5: the line ends in a carriage return alone; save the file with "
                         "the line ends of Unix or Windows"},
        {"a: 1 \x1b[31m\n", "t.yaml:1:6: here is a control character; take it out"},
        {"a:\n\tb: 1\n", "t.yaml:2:1: a tab stands in the indent; indent with blanks"},
        {"a:\n  \tb: 1\n", "t.yaml:2:3: a tab stands in the indent; indent with blanks"},
        {std::string((8U << 20U) + 1, '#'),
         "t.yaml: is larger than 8 MiB; leave out points that lie closer than a millimeter"},
    });
    CHECK(faults_of("a: 1 # a\ttab\n \t\nb: 2\n") == "");
}

TEST_CASE("parts of YAML that are not read") {
    check({
        {"a: &x 1\n", "t.yaml:1:4: anchors (&) are not read; take the & and its name out"},
        {"a: &x {b: 1}\n", "t.yaml:1:4: anchors (&) are not read; take the & and its name out"},
        {"a: &x\nb: 1\n", "t.yaml:1:1: anchors (&) are not read; take the & and its name out"},
        {"a: !!str 1\n", "t.yaml:1:4: tags (!) are not read; take the ! and its name out"},
        {"a: ! x\n", "t.yaml:1:4: tags (!) are not read; take the ! and its name out"},
        {"a: !t [1]\n", "t.yaml:1:4: tags (!) are not read; take the ! and its name out"},
        {"<<: {a: 1}\n", "t.yaml:1:1: merge keys (<<) are not read; write the keys out"},
        {"? a\n: 1\n", "t.yaml:1:3: keys marked with ? are not read; write it as KEY: VALUE"},
        {"b: {? a : 1}\n", "t.yaml:1:7: keys marked with ? are not read; write it as KEY: VALUE"},
        {"[a, b]: 1\n", "t.yaml:1:1: a list or map stands where a key should be; write it as KEY: "
                        "VALUE"},
        {": x\n", "t.yaml:1:1: a key is missing before the colon; write it as KEY: VALUE"},
        {"a: |\n  x\n", "t.yaml:1:4: texts of several lines (| and >) are not read; write it on "
                        "one line"},
        {"a: >-\n  x\n", "t.yaml:1:4: texts of several lines (| and >) are not read; write it on "
                         "one line"},
        {"a: 1\n---\nb: 2\n",
         "t.yaml:2:1: a second document begins here; put it into a file of its own"},
        {"{a: 1} {b: 2}\n", "t.yaml:1:8: this does not belong to what stands above it; begin all "
                            "keys of the file in the same column, and put nothing after the last "
                            "bracket"},
        {"  a: 1\nb: 2\n", "t.yaml:2:1: this does not belong to what stands above it; begin all "
                           "keys of the file in the same column, and put nothing after the last "
                           "bracket"},
        {"a: &x 1\nb: *x\n", "t.yaml:1:4: anchors (&) are not read; take the & and its name out\n"
                             "t.yaml:2:4: aliases (*) are not read; write the value itself"},
    });
    CHECK(faults_of("---\na: 1\n...\n") == "");
    CHECK(faults_of("a: \"?\"\nb: '!'\nc: x & y\nd: [\"*\"]\n") == "");
}

TEST_CASE("texts stay on their line") {
    check({
        {"film: \"Gloss\nroll: {width: 1524 mm}\n",
         "t.yaml:1:7: the quote opened here is not closed on its line; close it with \""},
        {"film: 'Gloss\nb: 'x'\n",
         "t.yaml:1:7: the quote opened here is not closed on its line; close it with '"},
        {"film: \"Gloss\n  black\"\n",
         "t.yaml:1:7: the quote opened here is not closed on its line; close it with \""},
        {"film: Gloss\n  black\nb: 1\n",
         "t.yaml:1:7: this text runs on over the end of its line; write it on one line; a line "
         "below may be indented too far"},
    });
    CHECK(faults_of("a: 'it''s'\nb: \"say \\\"so\\\"\"\n") == "");
}

TEST_CASE("repeated keys name both lines") {
    check({
        {"a: 1\nb: 2\na: 3\n", "t.yaml:3:1: 'a' stands here again, after line 1; keep one of the "
                               "two"},
        {"p:\n  hood: {size: [1, 2]}\n  roof: {size: [1, 2]}\n  hood: {size: [3, 4]}\n  'hood': "
         "1\n",
         "t.yaml:4:3: 'hood' stands here again, after line 2; keep one of the two\n"
         "t.yaml:5:3: 'hood' stands here again, after line 2; keep one of the two"},
    });
}

TEST_CASE("depth and size have limits") {
    check({
        {"a: " + std::string(32, '[') + std::string(32, ']') + "\n",
         "t.yaml:1:35: maps and lists stand more than 32 deep in one another; close brackets, or "
         "indent less"},
    });
    const bool told_once =
        faults_of(std::string(100'000, '[')).find(" stand more than 32 deep") != std::string::npos;
    CHECK(told_once);
    CHECK(faults_of("a: " + std::string(31, '[') + std::string(31, ']') + "\n") == "");
    std::string points = "a: [";
    for (int i = 0; i <= 200'000; ++i)
        points += "[1, 2],\n ";
    CHECK(faults_of(points + "]\n").starts_with("t.yaml:200001:"));
    CHECK(faults_of(points + "]\n")
              .find("the file holds more than 200,000 points; leave out "
                    "points that lie closer than a millimeter") != std::string::npos);
    std::string values = "a: [";
    for (int i = 0; i <= 1'000'000; ++i)
        values += i % 1'000 == 0 ? "1,\n " : "1, ";
    CHECK(faults_of(values + "]\n").find("the file holds more than a million values") !=
          std::string::npos);
}

TEST_CASE("syntax errors point at the slip") {
    const std::string deeper = "this line is indented further than the one above it, which has its "
                               "value already; indent both alike";
    check({
        {"a:\n  b: [[1, 2], [3, 4]\n  c: 3\n",
         "t.yaml:2:6: the bracket '[' opened here is not closed; close it with ]"},
        {"a: {b: 1\nc: 3\n", "t.yaml:1:4: the bracket '{' opened here is not closed; close it with "
                             "}"},
        {"a: [1, 2}\nb: 3\n",
         "t.yaml:1:9: '}' stands here while '[' of line 1 is still open; close "
         "that one first with ]"},
        {"a: [1]]\n", "t.yaml:1:7: the bracket ']' closes nothing; take it out, or open it before"},
        {"a: {b: 1}}\n", "t.yaml:1:10: the bracket '}' closes nothing; take it out, or open it "
                         "before"},
        {"vehicle:Town\npanels: 3\n", "t.yaml:1:8: after the colon a blank is missing; put one "
                                      "between the key and its value"},
        {"a: 1\n  b: 2\n", "t.yaml:2:3: " + deeper},
        {"a: 1\n\n# remark\n  b: 2\n", "t.yaml:4:3: " + deeper},
        {"a: b: c\n", "t.yaml:1:5: a second colon stands in this line; put one KEY: VALUE on a "
                      "line, and texts that hold a colon in quotes"},
        {"panels:\n  hood\n  roof: {size: [1, 2]}\n", "t.yaml:2:3: this line is neither a key nor "
                                                      "a value; write it as KEY: VALUE, or take it "
                                                      "out"},
        {"a: @x\n", "t.yaml:1:4: a text cannot begin with this character; put the text in quotes"},
        {"a: \"\\q\"\n",
         "t.yaml:1:7: a backslash in double quotes begins a code that is not known; "
         "put the text in single quotes"},
        {"a: - b\n", "t.yaml:1:4: a list with dashes cannot begin here; begin it on a line of its "
                     "own, or write it in brackets"},
        {"a: 1\n- b\n", "t.yaml:2:1: this does not go on what stands above; begin it in the same "
                        "column as the keys or dashes that it belongs to"},
        {"a: \"x\" y\n", "t.yaml:1:8: this does not go on what stands above; begin it in the same "
                         "column as the keys or dashes that it belongs to"},
    });
}

TEST_CASE("a parser that never returned for a comma is asked twice at most") {
    Faults faults;
    const auto root = read::parse(file(","), faults);
    CHECK(!root.has_value());
    CHECK(faults.size() == 1);
}

} // namespace
} // namespace pelt::read_test
