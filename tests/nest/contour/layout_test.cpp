// SPDX-License-Identifier: MIT
#include "nest/contour/jobs.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

namespace pelt::test {
namespace {

TEST_CASE("random jobs: everything is there, apart, inside, and not below the bound") {
    for (unsigned seed = 1; seed <= 12; ++seed) {
        CAPTURE(seed);
        std::mt19937 random(seed);
        const std::vector<Piece> pieces = random_pieces(random, 3 + seed);
        const std::vector<Roll> rolls{roll_of(1'520'000)};
        const Um gap = seed % 3 == 0 ? 0 : static_cast<Um>(seed) * 1000;
        const nest::Result result = nested(pieces, rolls, gap);
        CHECK(result.misfits.empty());
        REQUIRE(result.layout);
        CHECK(faults_of(pieces, rolls, gap, *result.layout) == "");
        CHECK(result.layout->bound.length > 0);
        CHECK(result.layout->bound.length <= length_of(*result.layout));
    }
}

TEST_CASE("several rolls with trim and flaws are filled and respected") {
    for (unsigned seed = 1; seed <= 6; ++seed) {
        CAPTURE(seed);
        std::mt19937 random(100 + seed);
        const std::vector<Piece> pieces = random_pieces(random, 10);
        std::vector<Roll> rolls{roll_of(1'000'000, 1'500'000), roll_of(1'520'000, 2'000'000),
                                roll_of(1'520'000)};
        for (Roll& roll : rolls)
            roll.trim = 6'000;
        rolls[0].flaws.push_back({700'000, 720'000, std::nullopt, std::nullopt});
        rolls[1].flaws.push_back({900'000, 1'000'000, 300'000, 500'000});
        rolls[1].arrow_known = false;
        const nest::Result result = nested(pieces, rolls, 4'000);
        REQUIRE(result.layout);
        CHECK(faults_of(pieces, rolls, 4'000, *result.layout) == "");
        for (std::size_t i = 0; i + 1 < result.layout->rolls.size(); ++i)
            CHECK(result.layout->rolls[i].roll < result.layout->rolls[i + 1].roll);
    }
}

TEST_CASE("hundreds of pieces have a layout at first sight") {
    std::mt19937 random(31);
    std::vector<Piece> pieces = random_pieces(random, 40);
    for (Piece& piece : pieces) {
        const PieceId first = piece.ids.front();
        for (int copy = static_cast<int>(piece.ids.size()) + 1; copy <= 16; ++copy) {
            piece.ids.push_back(first);
            piece.ids.back().copy = copy;
        }
    }
    const std::vector<Roll> rolls{roll_of(1'520'000)};
    const nest::Result result = tried(pieces, rolls, 4'000, 2);
    REQUIRE(result.layout);
    CHECK(faults_of(pieces, rolls, 4'000, *result.layout) == "");
}

TEST_CASE("a long row of small pieces is laid to its end") {
    // Three abreast: 400 rows, more than a walk along the film has steps.
    const std::vector<Piece> pieces{
        piece_of({rectangle(0, 0, 30'000, 30'000), {}}, {no_turn}, 1'200)};
    const std::vector<Roll> rolls{roll_of(100'000)};
    const nest::Result result = tried(pieces, rolls, 1'000, 2);
    REQUIRE(result.layout);
    CHECK(faults_of(pieces, rolls, 1'000, *result.layout) == "");
    CHECK(length_of(*result.layout) <= 2 * 400 * 31'000);
}

TEST_CASE("the threads do not change the layout") {
    std::mt19937 random(7);
    const std::vector<Piece> pieces = random_pieces(random, 8);
    const std::vector<Roll> rolls{roll_of(1'520'000)};
    const nest::Result one = nested(pieces, rolls, 3'000, 1, 0.15);
    const nest::Result two = nested(pieces, rolls, 3'000, 2, 0.15);
    const nest::Result many = nested(pieces, rolls, 3'000, 11, 0.15);
    REQUIRE(one.layout);
    CHECK(numbers(*one.layout) == numbers(two.layout.value()));
    CHECK(numbers(*one.layout) == numbers(many.layout.value()));
}

TEST_CASE("the order of the pieces does not change the length") {
    std::mt19937 random(8);
    std::vector<Piece> pieces = random_pieces(random, 8);
    const std::vector<Roll> rolls{roll_of(1'520'000)};
    const nest::Result before = nested(pieces, rolls, 3'000);
    std::shuffle(pieces.begin(), pieces.end(), random);
    const nest::Result after = nested(pieces, rolls, 3'000);
    REQUIRE(before.layout);
    REQUIRE(after.layout);
    CHECK(length_of(*before.layout) == length_of(*after.layout));
}

TEST_CASE("what no roll takes is named") {
    std::vector<Piece> pieces{
        piece_of({rectangle(0, 0, 400'000, 500'000), {}}, {no_turn}),
        piece_of({rectangle(0, 0, 400'000, 700'000), {}}, {no_turn}),
        piece_of({rectangle(0, 0, 400'000, 700'000), {}}, {no_turn, quarter_turn})};
    const nest::Result result = nested(pieces, {roll_of(600'000)}, 0);
    CHECK_FALSE(result.layout);
    CHECK(result.misfits == std::vector<std::size_t>{1});
}

TEST_CASE("a roll that is too short in all leaves misfits") {
    const std::vector<Piece> pieces{
        piece_of({rectangle(0, 0, 400'000, 500'000), {}}, {no_turn}, 4)};
    const nest::Result result = nested(pieces, {roll_of(600'000, 1'000'000)}, 0);
    CHECK_FALSE(result.layout);
    CHECK(result.misfits == std::vector<std::size_t>{0});
}

TEST_CASE("the watch may stop the search, which then gives its best so far") {
    std::mt19937 random(9);
    const std::vector<Piece> pieces = random_pieces(random, 8);
    const std::vector<Roll> rolls{roll_of(1'520'000)};
    nest::Goal goal;
    goal.by = CutBy::contour;
    nest::Effort endless;
    endless.amount = 0;
    int calls = 0;
    const nest::Result result = nest::nest(pieces, rolls, goal, endless,
                                           [&](const nest::Progress&) { return ++calls < 2; });
    REQUIRE(result.layout);
    CHECK(calls == 2);
    CHECK(result.layout->stopped);
    CHECK(faults_of(pieces, rolls, 0, *result.layout) == "");
}

} // namespace
} // namespace pelt::test
