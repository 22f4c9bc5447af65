// SPDX-License-Identifier: MIT
// Sections cut anew: less film, the same pieces.
#include "nest/straight/exact/part.hpp"
#include "nest/straight/random_job.hpp"
#include "nest/straight/recut.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace pelt {
namespace {

using namespace nest::straight;

Filled shelves_of_one(const Problem& problem) {
    Filled filled{0, {}};
    for (std::size_t k = 0; k < problem.kinds.size(); ++k)
        for (std::size_t copy = 0; copy < problem.kinds[k].demand(); ++copy)
            filled.sections.push_back(piece_block(problem, k, 0));
    return filled;
}

std::vector<std::size_t> pieces_of(const Filled& filled) {
    std::vector<std::size_t> pieces;
    for (const Block& section : filled.sections)
        list_pieces(section, pieces);
    std::sort(pieces.begin(), pieces.end());
    return pieces;
}

TEST_CASE("sections that are cut anew hold the same pieces on less film") {
    int found = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        CAPTURE(seed);
        nest::Random random(seed);
        std::vector<Piece> pieces;
        for (int i = 0; i < 8; ++i)
            pieces.push_back(test::rectangle((200 + static_cast<Um>(random.below(600))) * um_per_mm,
                                             (200 + static_cast<Um>(random.below(600))) * um_per_mm,
                                             i, 1, {no_turn}));
        Roll roll;
        roll.width = 1'500 * um_per_mm;
        nest::Goal goal;
        goal.stages = 3;
        const Problem problem = problem_of(pieces, std::vector<Roll>{roll}, goal);
        Filled filled = shelves_of_one(problem);
        const std::vector<std::size_t> before = pieces_of(filled);
        std::int64_t work = 100'000;
        while (const auto recut = find_recut(problem, filled, random, work)) {
            const Steps used = filled.used();
            apply(*recut, filled);
            CHECK(filled.used() == used - recut->saved);
            CHECK(recut->saved > 0);
            ++found;
        }
        CHECK(pieces_of(filled) == before);
    }
    CHECK(found >= 40);
}

TEST_CASE("a finished layout becomes a tree of the same length and back") {
    nest::Random random(3);
    std::vector<Piece> pieces;
    for (int i = 0; i < 9; ++i)
        pieces.push_back(test::rectangle((100 + static_cast<Um>(random.below(500))) * um_per_mm,
                                         (100 + static_cast<Um>(random.below(700))) * um_per_mm, i,
                                         2, {no_turn}));
    Roll roll;
    roll.width = 1'500 * um_per_mm;
    const Problem problem = problem_of(pieces, std::vector<Roll>{roll}, {});
    Filled filled = shelves_of_one(problem);
    std::int64_t work = 200'000;
    while (const auto recut = find_recut(problem, filled, random, work))
        apply(*recut, filled);
    Tree tree(problem, {filled.used()});
    for (const Block& section : filled.sections)
        tree.adopt(0, section);
    CHECK(tree.used(0) == filled.used());
    const Sheet back = sheet_of(tree);
    REQUIRE(back.size() == 1);
    CHECK(back.front().used() == filled.used());
    CHECK(pieces_of(back.front()) == pieces_of(filled));
}

} // namespace
} // namespace pelt
