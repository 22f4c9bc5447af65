// SPDX-License-Identifier: MIT
#include "model/fault.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <string>

using namespace pelt;

namespace {

std::string printed(const std::string& line, int column) {
    const auto source = std::make_shared<const Source>(Source{"t.yaml", "first\n" + line + "\n"});
    return to_string({Severity::file, {source, 2, column}, "", "what", "remedy"});
}

} // namespace

TEST_CASE("a fault has place, panel, what and remedy, each where there is one") {
    const auto source = std::make_shared<const Source>(Source{"t.yaml", "a: 1\n"});
    CHECK(to_string({Severity::file, {source, 1, 4}, "hood", "is wrong", "do it right"}, false) ==
          "t.yaml:1:4: panel 'hood': is wrong; do it right");
    CHECK(to_string({Severity::file, {source, 0, 0}, "", "is wrong", ""}) == "t.yaml: is wrong");
    CHECK(to_string({Severity::job, {}, "hood", "is wrong", ""}) == "panel 'hood': is wrong");
    CHECK(to_string({Severity::file, {source, 9, 1}, "", "is wrong", ""}) ==
          "t.yaml:9:1: is wrong");
}

TEST_CASE("the caret stands below the character, whatever stands before it") {
    CHECK(printed("abc", 2) == "t.yaml:2:2: what; remedy\n  abc\n   ^");
    CHECK(printed("T\u00fcr: x", 6) == "t.yaml:2:6: what; remedy\n  T\u00fcr: x\n       ^");
    CHECK(printed("\u8eca\u8eca: x", 5) ==
          "t.yaml:2:5: what; remedy\n  \u8eca\u8eca: x\n        ^");
    CHECK(printed("u\u0308: x", 5) == "t.yaml:2:5: what; remedy\n  u\u0308: x\n     ^");
    CHECK(printed("\ta:\tx", 5) == "t.yaml:2:5: what; remedy\n  \ta:\tx\n  \t  \t^");
    CHECK(printed("abc\r", 3) == "t.yaml:2:3: what; remedy\n  abc\n    ^");
    CHECK(printed("abc", 9) == "t.yaml:2:9: what; remedy\n  abc\n     ^");
}

TEST_CASE("long lines are cut around the place") {
    const std::string line = std::string(80, 'a') + "X" + std::string(200, 'b');
    CHECK(printed(line, 81) == "t.yaml:2:81: what; remedy\n  ..." + std::string(60, 'a') + "X" +
                                   std::string(39, 'b') + "...\n  " + std::string(63, ' ') + "^");
    CHECK(printed(line, 3) == "t.yaml:2:3: what; remedy\n  " + std::string(80, 'a') + "X" +
                                  std::string(19, 'b') + "...\n    ^");
    CHECK(printed(std::string(100, 'a'), 100) == "t.yaml:2:100: what; remedy\n  " +
                                                     std::string(100, 'a') + "\n  " +
                                                     std::string(99, ' ') + "^");
}

TEST_CASE("nothing of a file can give orders to a terminal") {
    const std::string text = printed("a\x1b[31m\xFF", 2);
    CHECK(text == "t.yaml:2:2: what; remedy\n  a?[31m\uFFFD\n   ^");
    CHECK(to_string({Severity::file, {}, "ho\x1b\nod", "\u202Ewhat", ""}) ==
          "panel 'ho??od': ?what");
}
