// SPDX-License-Identifier: MIT
#include "report/decimal.hpp"

#include <doctest/doctest.h>

#include <vector>

using namespace pelt::report;
using pelt::Int128;

TEST_CASE("decimals are written in full and keep the least number of places") {
    CHECK(decimal(0, 3, 1) == "0.0");
    CHECK(decimal(1'524'000, 3, 1) == "1524.0");
    CHECK(decimal(-1, 3, 1) == "-0.001");
    CHECK(decimal(-40'000, 3, 1) == "-40.0");
    CHECK(decimal(90'000, 3, 0) == "90");
    CHECK(decimal(22'500, 3, 0) == "22.5");
    CHECK(decimal(5, 7, 1) == "0.0000005");
    CHECK(decimal(Int128{9'000'000'000'000'000'000} * 1000 + 7, 7, 1) == "900000000000000.0000007");
}

TEST_CASE("quotients go down, up and to the nearest on both sides of zero") {
    CHECK(divided_down(7, 2) == 3);
    CHECK(divided_down(-7, 2) == -4);
    CHECK(divided_up(7, 2) == 4);
    CHECK(divided_up(-7, 2) == -3);
    CHECK(divided_up(6, 2) == 3);
    CHECK(divided_nearest(5, 10) == 1);
    CHECK(divided_nearest(4, 10) == 0);
    CHECK(divided_nearest(-5, 10) == -1);
    CHECK(divided_nearest(25, 10) == 3);
    CHECK(divided_nearest(35, 10) == 4);
}

TEST_CASE(
    "quotients that add up: what lost most by rounding down is one more, of equals the first") {
    using Parts = std::vector<Int128>;
    CHECK(divided_to_add_up({14, 14, 12}, 10, 4) == Parts{2, 1, 1});
    CHECK(divided_to_add_up({14, 14, 12}, 10, 3) == Parts{1, 1, 1});
    CHECK(divided_to_add_up({4, 9}, 10, 1) == Parts{0, 1});
    CHECK(divided_to_add_up({0, 20}, 10, 2) == Parts{0, 2});
    for (int a = 0; a < 40; ++a)
        for (int b = 0; b < 40; ++b)
            for (int c = 0; c < 40; ++c) {
                const Int128 sum = divided_nearest(a + b + c, 7);
                const Parts parts = divided_to_add_up({a, b, c}, 7, sum);
                REQUIRE(parts[0] + parts[1] + parts[2] == sum);
                REQUIRE(7 * parts[0] > a - 7);
                REQUIRE(7 * parts[0] < a + 7);
                REQUIRE(7 * parts[2] > c - 7);
                REQUIRE(7 * parts[2] < c + 7);
            }
}
