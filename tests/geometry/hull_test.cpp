// SPDX-License-Identifier: MIT
#include "geometry/geometry.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace pelt::test {
namespace {

TEST_CASE("laying along: the angle of the arctangent, to the nearest millidegree") {
    std::mt19937 random(3);
    std::uniform_int_distribution<Um> far(-3'000'000, 3'000'000);
    for (int k = 0; k < 2'000; ++k) {
        const GridPoint from{far(random), far(random)};
        const GridPoint to{far(random), far(random)};
        const double angle =
            std::atan2(static_cast<double>(to.y - from.y), static_cast<double>(to.x - from.x)) *
            180'000 / std::numbers::pi;
        double off = std::fmod(geometry::laying_along(from, to).millidegrees + angle, 360'000);
        off = std::min(std::abs(off), 360'000 - std::abs(off));
        CHECK(off < 0.501);
    }
    CHECK(geometry::laying_along({0, 0}, {5, 0}) == no_turn);
    CHECK(geometry::laying_along({0, 0}, {0, 5}) == three_quarter_turn);
    CHECK(geometry::laying_along({0, 0}, {-5, 0}) == half_turn);
    CHECK(geometry::laying_along({0, 0}, {0, -5}) == quarter_turn);
}

TEST_CASE("narrowest: no millidegree of a sweep is narrower, closed forms are met") {
    // An equilateral triangle is narrowest along a side: its height.
    const Ring triangle{{0, 0}, {1'000'000, 0}, {500'000, 866'025}};
    CHECK(geometry::narrowest(triangle).across >= 866'024);
    CHECK(geometry::narrowest(triangle).across <= 866'026);
    std::mt19937 random(4);
    std::uniform_int_distribution<Um> far(-400'000, 400'000);
    for (int k = 0; k < 20; ++k) {
        Ring ring;
        for (int i = 0; i < 9; ++i)
            ring.push_back({far(random), far(random)});
        const geometry::Narrowest best = geometry::narrowest(ring);
        CHECK(best.across == box_of(placed(ring, best.turn, {})).across());
        for (int angle = 0; angle < 180'000; angle += 37)
            CHECK(box_of(placed(ring, Turn{angle}, {})).across() >= best.across - 1);
    }
}

TEST_CASE("the hull holds every point and turns left at every corner") {
    const Ring hull =
        geometry::convex_hull({{0, 0}, {4, 0}, {2, 0}, {4, 4}, {1, 2}, {0, 4}, {2, 2}});
    CHECK(hull == Ring{{0, 0}, {4, 0}, {4, 4}, {0, 4}});
}

} // namespace
} // namespace pelt::test
