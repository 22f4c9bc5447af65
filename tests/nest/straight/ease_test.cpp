// SPDX-License-Identifier: MIT
// Layouts of one length: the one that is easier at the table.
#include "nest/straight/random_job.hpp"
#include "nest/straight/replay.hpp"

#include <doctest/doctest.h>

namespace pelt {
namespace {

Roll roll_of(Um width) {
    Roll roll;
    roll.width = width;
    return roll;
}

nest::Result solve(const std::vector<Piece>& pieces, const nest::Goal& goal) {
    return nest::nest(pieces, std::vector<Roll>{roll_of(1'000'000)}, goal, {1, 1, 1}, {});
}

TEST_CASE("strips lie in the order of laying where it costs no film") {
    std::vector<Piece> pieces;
    for (int i = 0; i < 4; ++i)
        pieces.push_back(test::rectangle((500 + 10 * i) * um_per_mm, 1'000'000, i, 1, {no_turn}));
    nest::Goal goal;
    goal.laying = {{3}, {1}, {0}, {2}};
    const nest::Result result = solve(pieces, goal);
    REQUIRE(result.layout);
    const std::vector<Placement>& placed = result.layout->rolls.front().placements;
    REQUIRE(placed.size() == 4);
    // The last strip is the one with most film beside its pieces; here there is none beside any.
    std::size_t before = 0;
    for (std::size_t i = 0; i + 1 < placed.size(); ++i) {
        const std::size_t place = goal.laying[placed[i].piece][placed[i].copy];
        CHECK((i == 0 || place > before));
        before = place;
    }
}

TEST_CASE("the largest film beside pieces stays at the end of the roll") {
    const std::vector<Piece> pieces{test::rectangle(700'000, 600'000, 0, 1, {no_turn}),
                                    test::rectangle(400'000, 950'000, 1, 1, {no_turn}),
                                    test::rectangle(300'000, 900'000, 2, 1, {no_turn})};
    nest::Goal goal;
    goal.laying = {{0}, {1}, {2}};
    const nest::Result result = solve(pieces, goal);
    REQUIRE(result.layout);
    CHECK(result.layout->rolls.front().placements.back().piece == 0);
}

TEST_CASE("equal pieces share their cuts") {
    // Four columns of three: each column is slit off once, each piece cut off once.
    const std::vector<Piece> pieces{test::rectangle(200'000, 250'000, 0, 12, {no_turn})};
    nest::Goal goal;
    goal.stages = 3;
    const nest::Result result = solve(pieces, goal);
    REQUIRE(result.layout);
    CHECK(result.layout->rolls.front().length == 600'000);
    CHECK(result.layout->rolls.front().cuts.size() <= 12);
}

} // namespace
} // namespace pelt
