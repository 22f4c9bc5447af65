// SPDX-License-Identifier: MIT
#include "nest/straight/random_job.hpp"
#include "nest/straight/replay.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace pelt {
namespace {

nest::Result solve(const test::RandomJob& job, int threads = 1) {
    return nest::nest(job.pieces, job.rolls, job.goal, {1, threads, 1}, {});
}

bool same(const Placement& a, const Placement& b) {
    return a.piece == b.piece && a.copy == b.copy && a.shape == b.shape && a.turn == b.turn &&
           a.at == b.at;
}

bool same(const Layout& a, const Layout& b) {
    return std::equal(
        a.rolls.begin(), a.rolls.end(), b.rolls.begin(), b.rolls.end(),
        [](const UsedRoll& x, const UsedRoll& y) {
            return x.roll == y.roll && x.length == y.length &&
                   std::equal(x.placements.begin(), x.placements.end(), y.placements.begin(),
                              y.placements.end(),
                              [](const auto& p, const auto& q) { return same(p, q); }) &&
                   std::equal(
                       x.cuts.begin(), x.cuts.end(), y.cuts.begin(), y.cuts.end(),
                       [](const Cut& p, const Cut& q) { return p.from == q.from && p.to == q.to; });
        });
}

TEST_CASE("random jobs: every piece is placed and freed by the cuts") {
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        CAPTURE(seed);
        const test::RandomJob job = test::random_job(seed);
        const nest::Result result = solve(job);
        REQUIRE(result.layout);
        for (const std::string& fault :
             test::faults_of(*result.layout, job.pieces, job.rolls, job.goal))
            FAIL_CHECK(fault);
    }
}

TEST_CASE("random jobs: the number of threads changes nothing") {
    for (std::uint64_t seed = 1001; seed <= 1015; ++seed) {
        CAPTURE(seed);
        const test::RandomJob job = test::random_job(seed);
        const nest::Result one = solve(job, 1);
        const nest::Result two = solve(job, 2);
        REQUIRE(one.layout);
        REQUIRE(two.layout);
        CHECK(same(*one.layout, *two.layout));
    }
}

TEST_CASE("random jobs: the order in which pieces come changes nothing") {
    for (std::uint64_t seed = 2001; seed <= 2015; ++seed) {
        CAPTURE(seed);
        test::RandomJob job = test::random_job(seed);
        const nest::Result before = solve(job);
        std::reverse(job.pieces.begin(), job.pieces.end());
        const nest::Result after = solve(job);
        REQUIRE(before.layout);
        REQUIRE(after.layout);
        REQUIRE(before.layout->rolls.size() == after.layout->rolls.size());
        for (std::size_t i = 0; i < before.layout->rolls.size(); ++i) {
            const UsedRoll& a = before.layout->rolls[i];
            const UsedRoll& b = after.layout->rolls[i];
            CHECK(a.length == b.length);
            REQUIRE(a.placements.size() == b.placements.size());
            for (std::size_t p = 0; p < a.placements.size(); ++p) {
                CHECK(job.pieces.size() - 1 - a.placements[p].piece == b.placements[p].piece);
                CHECK(a.placements[p].at == b.placements[p].at);
            }
        }
    }
}

} // namespace
} // namespace pelt
