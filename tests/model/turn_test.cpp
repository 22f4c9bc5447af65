// SPDX-License-Identifier: MIT
#include "model/polygon.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

namespace pelt::test {
namespace {

TEST_CASE("turns round to the grid as the sine and cosine of the library do in long doubles") {
    for (int angle = 1; angle < 360'000; angle += 97) {
        const long double a = angle * std::numbers::pi_v<long double> / 180'000.0L;
        const GridPoint p = placed({{12'345'678, -9'876'543}}, Turn{angle}, {}).front();
        CHECK(p.x == std::llround(std::cos(a) * 12'345'678.0L + std::sin(a) * 9'876'543.0L));
        CHECK(p.y == std::llround(std::sin(a) * 12'345'678.0L - std::cos(a) * 9'876'543.0L));
    }
}

} // namespace
} // namespace pelt::test

TEST_CASE("a polygon holds what lies in its outer ring and in none of its holes") {
    // A square of 10 with a hole of 4 in its middle; a notch comes down to (5, 8).
    const pelt::Polygon polygon{{{0, 0}, {10, 0}, {10, 10}, {5, 8}, {0, 10}},
                                {{{3, 3}, {3, 7}, {7, 7}, {7, 3}}}};
    CHECK(pelt::holds(polygon, {1, 1}));
    CHECK(pelt::holds(polygon, {8, 5}));
    CHECK(pelt::holds(polygon, {1, 9}));
    CHECK_FALSE(pelt::holds(polygon, {5, 5}));
    CHECK_FALSE(pelt::holds(polygon, {5, 9}));
    CHECK_FALSE(pelt::holds(polygon, {11, 5}));
    CHECK_FALSE(pelt::holds(polygon, {-1, 8}));
}
