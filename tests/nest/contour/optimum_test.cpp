// SPDX-License-Identifier: MIT
// Small jobs whose best length follows from their construction.
#include "nest/contour/jobs.hpp"

#include <doctest/doctest.h>

namespace pelt::test {
namespace {

// The search keeps some micrometres beyond every gap for rounding.
constexpr Um slack = 50;

Um least_length(const std::vector<Piece>& pieces, Um width, Um gap, double share = 0.1) {
    const std::vector<Roll> rolls{roll_of(width)};
    const nest::Result result = nested(pieces, rolls, gap, 1, share);
    REQUIRE(result.layout);
    CHECK(faults_of(pieces, rolls, gap, *result.layout) == "");
    CHECK(result.layout->bound.length <= result.layout->rolls.front().length);
    return result.layout->rolls.front().length;
}

TEST_CASE("one piece takes its own length, turned where it may") {
    const Polygon bar{rectangle(0, 0, 900'000, 200'000), {}};
    CHECK(least_length({piece_of(bar, {no_turn})}, 1'000'000, 5'000) == 900'000);
    CHECK(least_length({piece_of(bar, {no_turn, half_turn})}, 1'000'000, 5'000) == 900'000);
    CHECK(least_length({piece_of(bar, {no_turn, quarter_turn})}, 1'000'000, 5'000) == 200'000);
}

TEST_CASE("two triangles lie along their long sides") {
    const Polygon triangle{{{0, 0}, {600'000, 0}, {0, 400'000}}, {}};
    const Um length = least_length({piece_of(triangle, {no_turn, half_turn}, 2)}, 400'100, 0);
    CHECK(length >= 600'000);
    CHECK(length <= 600'000 + 200);
}

TEST_CASE("the gap is kept between outlines and nowhere else") {
    const Polygon square{rectangle(0, 0, 300'000, 300'000), {}};
    const Um length = least_length({piece_of(square, {no_turn}, 6)}, 2 * 300'000 + 10'100, 10'000);
    CHECK(length >= 3 * 300'000 + 2 * 10'000);
    CHECK(length <= 3 * 300'000 + 2 * 10'000 + slack);
}

TEST_CASE("a piece lies in a hole that is cut at the table") {
    const Polygon frame{rectangle(0, 0, 800'000, 600'000),
                        {rectangle(100'000, 100'000, 700'000, 500'000, true)}};
    const Polygon inner{rectangle(0, 0, 560'000, 360'000), {}};
    const std::vector<Piece> pieces{piece_of(frame, {no_turn}), piece_of(inner, {no_turn})};
    CHECK(least_length(pieces, 600'000, 10'000) == 800'000);
    // At 25 mm the hole is too small: 560 + 2 * 25 > 600.
    const Um length = least_length(pieces, 600'000, 25'000);
    CHECK(length >= 800'000 + 25'000 + 560'000);
    CHECK(length <= 800'000 + 25'000 + 560'000 + slack);
}

TEST_CASE("a jigsaw of a whole sheet closes without a gap") {
    // Invented: nine pieces that make a sheet of 1000 by 800; no length is shorter than its own.
    const std::vector<Ring> rings{
        {{0, 0}, {320'000, 0}, {210'000, 260'000}, {0, 300'000}},
        {{320'000, 0}, {700'000, 0}, {610'000, 190'000}, {210'000, 260'000}},
        {{700'000, 0}, {1'000'000, 0}, {1'000'000, 350'000}, {610'000, 190'000}},
        {{0, 300'000}, {210'000, 260'000}, {330'000, 470'000}, {0, 800'000}},
        {{210'000, 260'000}, {610'000, 190'000}, {560'000, 500'000}, {330'000, 470'000}},
        {{610'000, 190'000}, {1'000'000, 350'000}, {820'000, 610'000}, {560'000, 500'000}},
        {{0, 800'000}, {330'000, 470'000}, {420'000, 800'000}},
        {{330'000, 470'000},
         {560'000, 500'000},
         {820'000, 610'000},
         {700'000, 800'000},
         {420'000, 800'000}},
        {{1'000'000, 350'000}, {1'000'000, 800'000}, {700'000, 800'000}, {820'000, 610'000}}};
    std::vector<Piece> pieces;
    for (const Ring& ring : rings)
        pieces.push_back(piece_of({ring, {}}, {no_turn}));
    CHECK(least_length(pieces, 800'000, 0, 1) == 1'000'000);
}

TEST_CASE("hooks interlock") {
    // Two L shapes of 400 by 400 with arms of 100 make a block of 500 by 400.
    const Polygon hook{{{0, 0},
                        {400'000, 0},
                        {400'000, 100'000},
                        {100'000, 100'000},
                        {100'000, 400'000},
                        {0, 400'000}},
                       {}};
    const Um length = least_length({piece_of(hook, {no_turn, half_turn}, 2)}, 400'100, 0, 0.2);
    CHECK(length >= 500'000);
    CHECK(length <= 500'000 + 200);
}

} // namespace
} // namespace pelt::test
