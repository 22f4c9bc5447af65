// SPDX-License-Identifier: MIT
#include "model/utf8.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace pelt;

TEST_CASE("characters survive there and back") {
    const std::string text = "Tür é € 車 🚐";
    std::string back;
    for (const char32_t c : code_points(text))
        back += utf8(c);
    CHECK(back == text);
}

// RFC 3629, sections 3 and 10: overlong forms, surrogates and what lies beyond U+10FFFF are not
// UTF-8.
TEST_CASE("bytes that are not UTF-8 become the replacement character") {
    CHECK(code_points("\xC0\x80") == U"\uFFFD\uFFFD");
    CHECK(code_points("\xED\xA0\x80") == U"\uFFFD\uFFFD\uFFFD");
    CHECK(code_points("\xF4\x90\x80\x80") == U"\uFFFD\uFFFD\uFFFD\uFFFD");
    CHECK(code_points("a\xE2\x82") == U"a\uFFFD\uFFFD");
    CHECK(code_points("\xFF"
                      "b") == U"\uFFFDb");
}

TEST_CASE("columns in a terminal") {
    CHECK(display_width("hood") == 4);
    CHECK(display_width("Tür") == 3);
    CHECK(display_width("Tu\u0308r") == 3);
    CHECK(display_width("車") == 2);
    CHECK(display_width("1480 × 690 mm²") == 14);
}
