// SPDX-License-Identifier: MIT
#include "nest/contour/bounds.hpp"
#include "nest/contour/dual.hpp"
#include "nest/contour/jobs.hpp"
#include "nest/contour/slices.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <random>

namespace pelt::test {
namespace {

using namespace nest::contour;

Bound bound_of(const std::vector<Piece>& pieces, Um width, Um gap, std::size_t rolls = 1) {
    std::vector<std::size_t> demand;
    for (const Piece& piece : pieces)
        demand.push_back(piece.ids.size());
    return Bounds(pieces, width, gap, false).best(demand, rolls);
}

TEST_CASE("dual feasible functions do not fall and keep every full line full at most") {
    std::mt19937 random(1);
    std::uniform_real_distribution<double> unit(0, 1);
    for (const Dual& dual : duals()) {
        double before = 0;
        for (int k = 0; k <= 5040; ++k) {
            const double value = dual(k / 5040.0);
            CHECK(value >= before);
            CHECK(value <= 1);
            before = value;
        }
        for (int k = 0; k < 3000; ++k) {
            // Shares of 1, some of them whole fractions, where such functions jump.
            double left = 1;
            double sum = 0;
            while (left > 0.01) {
                double share = unit(random);
                if (random() % 2 == 0)
                    share = 1.0 / static_cast<double>(1 + random() % 12);
                share = std::min(share, left);
                sum += dual(share);
                left -= share;
            }
            CHECK(sum <= 1 + 1e-9);
        }
    }
}

TEST_CASE("slices add up to the area") {
    std::mt19937 random(2);
    for (const Piece& piece : random_pieces(random, 40)) {
        const Polygon& outline = piece.shapes.front().outline;
        double area = 0;
        for (const Slice& slice : slices_of({outline}))
            area += slice.along * (slice.across_from + slice.across_to) / 2;
        DoubleArea doubled = doubled_area(outline.outer);
        for (const Ring& hole : outline.holes)
            doubled += doubled_area(hole);
        CHECK(std::abs(area * 2 / static_cast<double>(doubled) - 1) < 1e-9);
    }
}

TEST_CASE("grown pieces stay within the exact growth and come near it") {
    // Steiner's formula for convex figures: area + perimeter r + pi r^2.
    const Polygon box{rectangle(0, 0, 300'000, 200'000), {}};
    const double r = 2'000;
    double area = 0;
    for (const Slice& slice : slices_of(grown_within(box, r)))
        area += slice.along * (slice.across_from + slice.across_to) / 2;
    const double exact = 300e3 * 200e3 + 1'000e3 * r + std::numbers::pi * r * r;
    CHECK(area <= exact);
    CHECK(area > exact * (1 - 1e-4));
}

TEST_CASE("a strip of squares of more than half the width counts one after another") {
    const std::vector<Piece> pieces{
        piece_of({rectangle(0, 0, 600'000, 600'000), {}}, {no_turn}, 5)};
    const Bound bound = bound_of(pieces, 1'000'000, 0);
    CHECK(bound.length > 5 * 600'000 - 10);
    CHECK(bound.length <= 5 * 600'000);
    CHECK(bound.argument.find("side by side") != std::string::npos);
    const Bound spaced = bound_of(pieces, 1'000'000, 4'000);
    CHECK(spaced.length > 5 * 600'000 + 4 * 4'000 - 100);
    CHECK(spaced.length <= 5 * 600'000 + 4 * 4'000);
    CHECK(bound_of(pieces, 1'000'000, 4'000, 3).length <= spaced.length - 2 * 4'000 + 1);
}

TEST_CASE("three across: pieces of over a quarter leave no room for a fourth") {
    const std::vector<Piece> pieces{
        piece_of({rectangle(0, 0, 400'000, 260'000), {}}, {no_turn}, 12)};
    const Bound bound = bound_of(pieces, 1'000'000, 0);
    CHECK(bound.length > 4 * 400'000 - 10);
    CHECK(bound.length <= 4 * 400'000);
}

TEST_CASE("the longest piece alone") {
    const std::vector<Piece> pieces{
        piece_of({rectangle(0, 0, 2'000'000, 100'000), {}}, {no_turn, half_turn})};
    CHECK(bound_of(pieces, 1'000'000, 0).length == 2'000'000);
    const std::vector<Piece> turnable{
        piece_of({rectangle(0, 0, 900'000, 100'000), {}}, {no_turn, quarter_turn})};
    CHECK(bound_of(turnable, 1'000'000, 0).length == 100'000);
}

// Cuts a rectangle of film into rectangles, so that its length is the least possible.
void divide(std::mt19937& random, Box box, Um gap, std::vector<Piece>& pieces) {
    const bool along = box.along() > box.across();
    const Um side = along ? box.along() : box.across();
    if (side < 300'000) {
        pieces.push_back(piece_of({rectangle(0, 0, box.along(), box.across()), {}}, {no_turn}));
        return;
    }
    const Um cut = side / 4 + static_cast<Um>(random() % static_cast<unsigned>(side / 2));
    Box one = box;
    Box two = box;
    (along ? one.high.x : one.high.y) = (along ? box.low.x : box.low.y) + cut - gap / 2;
    (along ? two.low.x : two.low.y) = (along ? box.low.x : box.low.y) + cut + gap / 2;
    divide(random, one, gap, pieces);
    divide(random, two, gap, pieces);
}

TEST_CASE("never above a length that is known to do") {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        CAPTURE(seed);
        std::mt19937 random(seed);
        const Um gap = static_cast<Um>(seed % 4) * 2'000;
        std::vector<Piece> pieces;
        divide(random, {{0, 0}, {2'000'000, 1'520'000}}, gap, pieces);
        const Bound bound = bound_of(pieces, 1'520'000, gap);
        CHECK(bound.length <= 2'000'000);
        CHECK(bound.length > 1'980'000);
    }
}

} // namespace
} // namespace pelt::test
