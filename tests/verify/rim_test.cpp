// SPDX-License-Identifier: MIT
// How near a rim is near, to the micrometer.
#include "verify/rim.hpp"

#include <doctest/doctest.h>

namespace pelt::verify {
namespace {

TEST_CASE("a point is near a rim up to the slack, inside and outside, at sides and at corners") {
    const Rim square(std::vector<Ring>{{{0, 0}, {1'000, 0}, {1'000, 1'000}, {0, 1'000}}});
    for (const Um slack : {0, 3, 50}) {
        CAPTURE(slack);
        for (const int out : {1, -1}) {
            CHECK(square.near_rim({1'000 + out * slack, 500}, slack));
            CHECK_FALSE(square.near_rim({1'000 + out * (slack + 1), 500}, slack));
        }
        CHECK(square.holds({500, -slack}, slack));
        CHECK_FALSE(square.holds({500, -slack - 1}, slack));
        CHECK(square.holds({500, 500}, slack));
    }
    CHECK(square.near_rim({1'003, 1'004}, 5)); // 5: 3-4-5
    CHECK_FALSE(square.near_rim({1'003, 1'004}, 4));
}

} // namespace
} // namespace pelt::verify
