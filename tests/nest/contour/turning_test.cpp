// SPDX-License-Identifier: MIT
// Free turns: pieces of any direction lie at any millidegree.
#include "nest/contour/jobs.hpp"

#include <doctest/doctest.h>

#include <random>

namespace pelt::test {
namespace {

const std::vector<Turn> quarters{no_turn, quarter_turn, half_turn, three_quarter_turn};

// A bar of 1400 by 200 that is drawn askew.
Polygon bar_askew(int millidegrees) {
    return placed(Polygon{rectangle(0, 0, 1'400'000, 200'000), {}}, Turn{millidegrees}, {});
}

Um length_of(const nest::Result& result) {
    REQUIRE(result.layout);
    return result.layout->rolls.front().length;
}

TEST_CASE("a bar that is drawn askew lies along the film's edge") {
    const std::vector<Piece> pieces{piece_of(bar_askew(23'456), quarters)};
    const std::vector<Roll> rolls{roll_of(1'450'000)};
    const nest::Result freely = nested_freely(pieces, rolls, 0);
    CHECK(faults_of(pieces, rolls, 0, *freely.layout, true) == "");
    // Across the film it takes its own width, and what a millidegree and the grid add.
    CHECK(length_of(freely) >= 200'000 - 2);
    CHECK(length_of(freely) <= 200'000 + 30);
    CHECK(freely.layout->bound.length >= 200'000 - 4);
    CHECK(freely.layout->bound.length <= length_of(freely));
    CHECK(length_of(nested(pieces, rolls, 0)) > 700'000); // 1400 sin 23.456 + 200 cos 23.456
}

TEST_CASE("what no quarter turn takes lies askew, film of one way does not") {
    // At 45 degrees the bar's box is (1400 + 200) / sqrt 2 = 1131 mm both ways.
    const std::vector<Roll> rolls{roll_of(1'000'000)};
    std::vector<Piece> pieces{piece_of(bar_askew(45'000), quarters)};
    CHECK(nested(pieces, rolls, 0).misfits == std::vector<std::size_t>{0});
    const nest::Result freely = nested_freely(pieces, rolls, 0);
    CHECK(freely.misfits.empty());
    CHECK(faults_of(pieces, rolls, 0, *freely.layout, true) == "");
    CHECK(length_of(freely) <= 1'400'030);
    pieces.front().direction = Direction::two_way;
    pieces.front().shapes.front().turns = {no_turn, half_turn};
    CHECK(nested_freely(pieces, rolls, 0).misfits == std::vector<std::size_t>{0});
}

TEST_CASE("free turns never take more film at equal effort, and keep every rule") {
    for (unsigned seed = 1; seed <= 2; ++seed) {
        CAPTURE(seed);
        std::mt19937 random(seed);
        std::vector<Piece> pieces = random_pieces(random, 5);
        const std::vector<Roll> rolls{roll_of(1'000'000)};
        const nest::Result listed = nested(pieces, rolls, 4'000, 2, 2);
        const nest::Result freely = nested_freely(pieces, rolls, 4'000, 2);
        REQUIRE(freely.layout);
        CHECK(faults_of(pieces, rolls, 4'000, *freely.layout, true) == "");
        CHECK(length_of(freely) <= length_of(listed));
        CHECK(freely.layout->bound.length <= length_of(freely));
        if (seed == 1)
            CHECK(length_of(nested_freely(pieces, rolls, 4'000, 1)) == length_of(freely));
    }
}

/// How often a search of effort 1 asks its watch, which it does after every share of its work.
int steps_of(const std::vector<Piece>& pieces, const std::vector<Roll>& rolls, bool freely) {
    nest::Goal goal;
    goal.by = CutBy::contour;
    goal.gap = 4'000;
    goal.free_turns = freely;
    int steps = 0;
    REQUIRE(nest::nest(pieces, rolls, goal, {}, [&](const nest::Progress&) {
                ++steps;
                return true;
            }).layout);
    return steps;
}

TEST_CASE("free turns take a quarter more steps of the search") {
    std::mt19937 random(1);
    const std::vector<Piece> pieces = random_pieces(random, 4);
    const std::vector<Roll> rolls{roll_of(1'000'000)};
    const int listed = steps_of(pieces, rolls, false);
    const int freely = steps_of(pieces, rolls, true);
    CHECK(freely > listed);
    CHECK(freely * 4 <= listed * 5);
}

} // namespace
} // namespace pelt::test
