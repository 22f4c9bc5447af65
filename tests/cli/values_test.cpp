// SPDX-License-Identifier: MIT
#include "cli/values.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace pelt::cli;

TEST_CASE("whole numbers are plain decimal digits within bounds") {
    CHECK(whole_number("1", 1, 10) == 1);
    CHECK(whole_number("10", 1, 10) == 10);
    CHECK(whole_number("0", 0, 10) == 0);
    for (const char* wrong : {"", "11", "0", "01", "010", "0x1", "1e0", "1.", "1.0", "+1", "-1",
                              " 1", "1 ", "nan", "inf", "1,0", "99999999999999999999999"}) {
        CAPTURE(wrong);
        CHECK_FALSE(whole_number(wrong, 1, 10).has_value());
    }
    CHECK(whole_number("9223372036854775807", 0, INT64_MAX) == INT64_MAX);
    CHECK_FALSE(whole_number("9223372036854775808", 0, INT64_MAX).has_value());
}

TEST_CASE("seconds are a decimal number above nought and up to a day") {
    CHECK(std::abs(seconds("2.5").value_or(0) - 2.5) < 1e-12);
    CHECK(std::abs(seconds("86400").value_or(0) - 86400) < 1e-9);
    for (const char* wrong : {"", "0", "0.0", "86400.1", "1e3", "nan", "inf", "-1", "+1", ".5",
                              "1.2.3", "0x1", "1 s"}) {
        CAPTURE(wrong);
        CHECK_FALSE(seconds(wrong).has_value());
    }
}

TEST_CASE("names stand between commas, blanks around them do not count") {
    CHECK(names_in("hood") == std::vector<std::string>{"hood"});
    CHECK(names_in("front door/left , roof") ==
          std::vector<std::string>{"front door/left", "roof"});
    for (const char* wrong : {"", ",", "a,", ",a", "a,,b", "a, ,b"}) {
        CAPTURE(wrong);
        CHECK_FALSE(names_in(wrong).has_value());
    }
}

TEST_CASE("quoted text holds nothing that a terminal would obey") {
    CHECK(in_quotes("roof") == "'roof'");
    CHECK(in_quotes("\x1b[31m\n\x7f") == "'?[31m?"
                                         "?'");
    CHECK(file_in_quotes("a\rb") == "'a?b'");
    CHECK(in_quotes("Türgriff") == "'Türgriff'");
}

TEST_CASE("long text is cut, paths are not") {
    const std::string eighty(80, 'a');
    CHECK(in_quotes(eighty) == "'" + eighty.substr(0, 40) + "...'");
    CHECK(file_in_quotes(eighty) == "'" + eighty + "'");
}
