// SPDX-License-Identifier: MIT
#include "asked_jobs.hpp"
#include "nest/straight/random_job.hpp"
#include "nest/straight/replay.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <optional>

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

TEST_CASE("random jobs: no slit takes only the roll edge off pieces that are all slit below it") {
    int slits = 0;
    for (std::uint64_t seed = 1; seed <= 150; ++seed) {
        CAPTURE(seed);
        const test::RandomJob job = test::random_job(seed);
        const nest::Result result = solve(job);
        REQUIRE(result.layout);
        for (const UsedRoll& used : result.layout->rolls) {
            const Roll& roll = job.rolls[used.roll];
            for (const Cut& cut : used.cuts) {
                if (cut.from.y != cut.to.y || cut.from.y < roll.width - roll.trim)
                    continue;
                ++slits;
                CHECK(std::any_of(
                    used.placements.begin(), used.placements.end(), [&](const Placement& p) {
                        const Box box = box_of(
                            placed(job.pieces[p.piece].shapes[p.shape].outline.outer, p.turn, p.at));
                        return box.high.y == cut.from.y && box.low.x >= cut.from.x &&
                               box.high.x <= cut.to.x;
                    }));
            }
        }
    }
    CHECK(slits > 10);
}

/// Pieces that lie in one way only, so that every layout is of the same rectangles.
void fix_the_lies(test::RandomJob& job) {
    for (Piece& piece : job.pieces) {
        piece.direction = Direction::one_way;
        piece.shapes.resize(1);
        piece.shapes.front().turns = {no_turn};
    }
    std::erase_if(job.rolls, [](const Roll& roll) { return !roll.is_new; });
}

TEST_CASE("random jobs: no bound is above a length found with any rules, seed or effort") {
    for (std::uint64_t seed = 4001; seed <= 4025; ++seed) {
        CAPTURE(seed);
        test::RandomJob job = test::random_job(seed);
        fix_the_lies(job);
        Um bound = 0;
        Um shortest = 0;
        Um shortest_by_proof = 0;
        for (const std::optional<int> stages :
             {std::optional<int>(2), std::optional<int>(3), std::optional<int>()})
            for (const std::uint64_t start : {1U, 2U}) {
                job.goal.stages = stages;
                const nest::Result result =
                    nest::nest(job.pieces, job.rolls, job.goal,
                               {static_cast<int>(2 * start - 1), 1, start}, {});
                REQUIRE(result.layout);
                const Um length = test::new_length(*result.layout, job.rolls);
                bound = std::max(bound, result.layout->bound.length);
                shortest = shortest == 0 ? length : std::min(shortest, length);
                if (result.layout->shortest && !stages)
                    shortest_by_proof = length;
            }
        CHECK(bound <= shortest);
        CHECK(shortest_by_proof <= shortest);
    }
}

/// Places in the order of laying, by the strips that whole cuts across the roll make.
std::vector<std::vector<std::size_t>> laid_by_strip(const test::RandomJob& job,
                                                    const UsedRoll& used) {
    const Um width = job.rolls[used.roll].width;
    std::vector<Um> ends;
    for (const Cut& cut : used.cuts)
        if (cut.from.x == cut.to.x && std::min(cut.from.y, cut.to.y) == 0 &&
            std::max(cut.from.y, cut.to.y) == width)
            ends.push_back(cut.from.x);
    ends.push_back(used.length); // a cut at the roll's own end is not made
    std::vector<std::vector<std::size_t>> out(ends.size());
    for (const Placement& p : used.placements) {
        const Box box =
            box_of(placed(job.pieces[p.piece].shapes[p.shape].outline.outer, p.turn, p.at));
        const auto end = std::lower_bound(ends.begin(), ends.end(), box.high.x);
        out[static_cast<std::size_t>(end - ends.begin())].push_back(
            job.goal.laying[p.piece][p.copy]);
    }
    return out;
}

TEST_CASE("random jobs in the order of laying: each strip holds what is laid next") {
    for (std::uint64_t seed = 3001; seed <= 3060; ++seed) {
        CAPTURE(seed);
        test::RandomJob job = test::random_job(seed);
        test::lay_in_random_order(job, seed);
        job.goal.in_order = true;
        const nest::Result result = solve(job);
        if (!result.layout)
            continue; // the stock was used up by pieces that another order keeps it for
        for (const std::string& fault :
             test::faults_of(*result.layout, job.pieces, job.rolls, job.goal))
            FAIL_CHECK(fault);
        std::size_t next = 0;
        for (const UsedRoll& used : result.layout->rolls)
            for (std::vector<std::size_t>& strip : laid_by_strip(job, used)) {
                std::sort(strip.begin(), strip.end());
                for (const std::size_t place : strip)
                    CHECK(place == next++);
            }
        CHECK(result.layout->bound.length <= test::new_length(*result.layout, job.rolls));
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

TEST_CASE("random jobs: more effort never gives a longer layout") {
    for (std::uint64_t seed = 7001; seed <= 7012; ++seed) {
        CAPTURE(seed);
        const test::RandomJob job = test::random_job(seed);
        std::optional<Um> before;
        for (const int effort : {1, 2, 5}) {
            const nest::Result found =
                nest::nest(job.pieces, job.rolls, job.goal, {effort, 1, 1}, {});
            REQUIRE(found.layout);
            if (before)
                CHECK(test::new_length(*found.layout, job.rolls) <= *before);
            before = test::new_length(*found.layout, job.rolls);
        }
    }
}

/// The same job with fewer stages, without quarter turns, or both.
std::vector<test::RandomJob> narrower(const test::RandomJob& job) {
    std::vector<test::RandomJob> out;
    test::RandomJob upright = job;
    for (Piece& piece : upright.pieces) {
        piece.shapes.resize(1);
        piece.shapes.front().turns = {no_turn};
    }
    out.push_back(upright);
    for (const int stages : {3, 2})
        if (!job.goal.stages || *job.goal.stages > stages)
            for (test::RandomJob fewer : {job, upright}) {
                fewer.goal.stages = stages;
                out.push_back(std::move(fewer));
            }
    return out;
}

TEST_CASE("random jobs: a freer job never gets a longer layout than a narrower one that it contains") {
    int freer_is_shorter = 0;
    const int jobs = test::asked_jobs("PELT_RANDOM_JOBS", 40); // 300 take two minutes
    for (int i = 1; i <= jobs; ++i) {
        const std::uint64_t seed = 9000 + static_cast<std::uint64_t>(i);
        CAPTURE(seed);
        const test::RandomJob job = test::random_job(seed);
        const nest::Result free = solve(job);
        REQUIRE(free.layout);
        const Um length = test::new_length(*free.layout, job.rolls);
        for (const test::RandomJob& other : narrower(job)) {
            const nest::Result found = solve(other);
            if (!found.layout)
                continue;
            CHECK(length <= test::new_length(*found.layout, job.rolls));
            freer_is_shorter += length < test::new_length(*found.layout, job.rolls) ? 1 : 0;
        }
    }
    CHECK(3 * freer_is_shorter > jobs); // else the jobs are no harder than the bound
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
