// SPDX-License-Identifier: MIT
// The search's distance fields against distances and overlaps computed from the outlines.
#include "geometry/geometry.hpp"
#include "nest/contour/convex_parts.hpp"
#include "nest/contour/exact.hpp"
#include "nest/contour/field.hpp"
#include "nest/contour/jobs.hpp"
#include "nest/contour/simplify.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <random>

namespace pelt::test {
namespace {

using namespace nest::contour;

DoubleArea area_of(const Polygon& polygon) {
    DoubleArea sum = doubled_area(polygon.outer);
    for (const Ring& hole : polygon.holes)
        sum += doubled_area(hole);
    return sum;
}

TEST_CASE("convex parts are convex and add up to the polygon") {
    std::mt19937 random(3);
    for (const Piece& piece : random_pieces(random, 60)) {
        const Polygon& outline = piece.shapes.front().outline;
        DoubleArea sum = 0;
        for (const Ring& part : convex_parts(outline)) {
            CHECK(doubled_area(part) == doubled_area(geometry::convex_hull(part)));
            sum += doubled_area(part);
        }
        CHECK(sum == area_of(outline));
    }
}

TEST_CASE("a simplified polygon covers the one it stands for, with fewer points") {
    std::mt19937 random(4);
    for (const Piece& piece : random_pieces(random, 40)) {
        const Polygon& outline = piece.shapes.front().outline;
        const Polygon plain = simplified(outline, 30'000, 4, 0);
        CHECK(plain.outer.size() <= outline.outer.size());
        CHECK(area_of(plain) >= area_of(outline));
        // What lies clear of the simplified polygon lies clear of the polygon.
        for (int k = 0; k < 60; ++k) {
            const Um x = static_cast<Um>(random() % 700'000) - 350'000;
            const Um y = static_cast<Um>(random() % 700'000) - 350'000;
            const Polygon probe{rectangle(x, y, x + 20'000, y + 20'000), {}};
            if (keeps_clear(plain, probe, 0))
                CHECK(keeps_clear(outline, probe, 0));
        }
    }
}

TEST_CASE("fields tell overlap and distance as the outlines do") {
    std::mt19937 random(5);
    const std::vector<Piece> pieces = random_pieces(random, 16);
    constexpr double reach = 40'000;
    for (std::size_t i = 0; i + 1 < pieces.size(); i += 2) {
        const Polygon& fixed = pieces[i].shapes.front().outline;
        const Polygon& moving = pieces[i + 1].shapes.front().outline;
        const Field field(forbidden_boundary(body_of(fixed), body_of(moving)), reach, reach);
        for (int k = 0; k < 400; ++k) {
            const Um x = static_cast<Um>(random() % 1'300'000) - 650'000;
            const Um y = static_cast<Um>(random() % 1'300'000) - 650'000;
            const double distance =
                field.distance({static_cast<double>(x), static_cast<double>(y)});
            const Polygon there = placed(moving, no_turn, {x, y});
            if (std::abs(distance) > 0.01)
                CHECK((distance > 0) == keeps_clear(fixed, there, 0));
            if (distance > 1 && distance < reach) {
                CHECK(keeps_clear(fixed, there, static_cast<Um>(std::floor(distance - 0.01))));
                CHECK_FALSE(keeps_clear(fixed, there, static_cast<Um>(std::ceil(distance + 0.01))));
            }
        }
    }
}

} // namespace
} // namespace pelt::test
