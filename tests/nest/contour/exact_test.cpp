// SPDX-License-Identifier: MIT
#include "nest/contour/exact.hpp"
#include "nest/contour/jobs.hpp"

#include <doctest/doctest.h>

namespace pelt::test {
namespace {

using nest::contour::keeps_clear;

Polygon at(const Polygon& polygon, Um x, Um y) {
    return placed(polygon, no_turn, {x, y});
}

const Polygon square{rectangle(0, 0, 100, 100), {}};
const Polygon frame{rectangle(0, 0, 300, 300), {rectangle(100, 100, 200, 200, true)}};

TEST_CASE("touching is clear at no gap, a micrometer of overlap is not") {
    CHECK(keeps_clear(square, at(square, 100, 0), 0));
    CHECK(keeps_clear(square, at(square, 100, 100), 0));
    CHECK(keeps_clear(square, at(square, 100, 37), 0));
    CHECK_FALSE(keeps_clear(square, at(square, 99, 0), 0));
    CHECK_FALSE(keeps_clear(square, at(square, 99, 99), 0));
    CHECK_FALSE(keeps_clear(square, square, 0));
    CHECK_FALSE(keeps_clear(square, at(square, 0, 50), 0));
}

TEST_CASE("a piece within another overlaps it, in its hole it does not") {
    const Polygon small{rectangle(0, 0, 50, 50), {}};
    CHECK_FALSE(keeps_clear(square, at(small, 20, 20), 0));
    CHECK_FALSE(keeps_clear(at(small, 20, 20), square, 0));
    CHECK(keeps_clear(frame, at(small, 125, 125), 0));
    CHECK(keeps_clear(frame, at(square, 100, 100), 0));
    CHECK_FALSE(keeps_clear(frame, at(square, 101, 100), 0));
    CHECK_FALSE(keeps_clear(frame, at(square, 50, 100), 0));
    CHECK_FALSE(keeps_clear(frame, frame, 0));
}

TEST_CASE("a piece that covers another and its hole overlaps") {
    const Polygon cover{rectangle(-10, -10, 310, 310), {}};
    CHECK_FALSE(keeps_clear(frame, cover, 0));
    CHECK_FALSE(keeps_clear(cover, frame, 0));
    const Polygon same_outside{rectangle(0, 0, 300, 300), {}};
    CHECK_FALSE(keeps_clear(frame, same_outside, 0));
}

TEST_CASE("the gap counts in every direction and at hole rims, to the micrometer") {
    CHECK(keeps_clear(square, at(square, 110, 0), 10));
    CHECK_FALSE(keeps_clear(square, at(square, 109, 0), 10));
    // 6-8-10 between corners.
    CHECK(keeps_clear(square, at(square, 106, 108), 10));
    CHECK_FALSE(keeps_clear(square, at(square, 106, 107), 10));
    const Polygon small{rectangle(0, 0, 80, 80), {}};
    CHECK(keeps_clear(frame, at(small, 110, 110), 10));
    CHECK_FALSE(keeps_clear(frame, at(small, 111, 110), 10));
}

TEST_CASE("a corner that only touches a slanted side is clear") {
    const Polygon wedge{{{0, 0}, {300, 0}, {0, 200}}, {}};
    const Polygon corner{{{150, 100}, {300, 100}, {300, 300}, {150, 300}}, {}};
    CHECK(keeps_clear(wedge, corner, 0));
    CHECK_FALSE(keeps_clear(wedge, at(corner, -1, 0), 0));
    CHECK_FALSE(keeps_clear(wedge, corner, 1));
}

} // namespace
} // namespace pelt::test
