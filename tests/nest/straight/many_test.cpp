// SPDX-License-Identifier: MIT
// Jobs whose kinds repeat many times.
#include "nest/straight/random_job.hpp"
#include "nest/straight/replay.hpp"

#include <doctest/doctest.h>

namespace pelt {
namespace {

struct Job {
    std::vector<Piece> pieces;
    std::vector<Roll> rolls;
    nest::Goal goal;
};

Job job_of(std::uint64_t seed, int kinds, int copies, std::optional<Um> roll_length) {
    nest::Random random(seed);
    Job job;
    job.goal.stages = 3;
    for (int i = 0; i < kinds; ++i)
        job.pieces.push_back(test::rectangle(
            (100 + static_cast<Um>(random.below(1'100))) * um_per_mm,
            (100 + static_cast<Um>(random.below(800))) * um_per_mm, i, copies, {no_turn}));
    Roll roll;
    roll.width = 1'512 * um_per_mm;
    roll.available = roll_length;
    job.rolls.assign(roll_length ? 400 : 1, roll);
    return job;
}

TEST_CASE("hundreds of pieces of a few kinds: all of them, cut as asked, near the bound") {
    for (const std::optional<Um> roll_length :
         {std::optional<Um>(), std::optional<Um>(10'000'000)}) {
        CAPTURE(roll_length.has_value());
        const Job job = job_of(11, 20, 30, roll_length);
        const nest::Result result = nest::nest(job.pieces, job.rolls, job.goal, {1, 2, 1}, {});
        REQUIRE(result.layout);
        for (const std::string& fault :
             test::faults_of(*result.layout, job.pieces, job.rolls, job.goal))
            FAIL_CHECK(fault);
        const Um length = test::new_length(*result.layout, job.rolls);
        CHECK(length >= result.layout->bound.length);
        CHECK(length * 100 <= result.layout->bound.length * 107);
    }
}

TEST_CASE("hundreds of pieces: the number of threads changes nothing") {
    const Job job = job_of(12, 15, 20, {});
    const nest::Result one = nest::nest(job.pieces, job.rolls, job.goal, {1, 1, 1}, {});
    const nest::Result two = nest::nest(job.pieces, job.rolls, job.goal, {1, 2, 1}, {});
    REQUIRE(one.layout);
    REQUIRE(two.layout);
    REQUIRE(one.layout->rolls.size() == two.layout->rolls.size());
    const UsedRoll& a = one.layout->rolls.front();
    const UsedRoll& b = two.layout->rolls.front();
    CHECK(a.length == b.length);
    REQUIRE(a.placements.size() == b.placements.size());
    for (std::size_t i = 0; i < a.placements.size(); ++i) {
        CHECK(a.placements[i].piece == b.placements[i].piece);
        CHECK(a.placements[i].at == b.placements[i].at);
    }
}

TEST_CASE("a job n times over takes at most n times its film") {
    for (std::uint64_t seed = 21; seed <= 24; ++seed) {
        CAPTURE(seed);
        const Job once = job_of(seed, 12, 1, {});
        const nest::Result one = nest::nest(once.pieces, once.rolls, once.goal, {1, 1, 1}, {});
        REQUIRE(one.layout);
        for (const int times : {2, 3, 10}) {
            CAPTURE(times);
            const Job job = job_of(seed, 12, times, {});
            const nest::Result all = nest::nest(job.pieces, job.rolls, job.goal, {1, 1, 1}, {});
            REQUIRE(all.layout);
            CHECK(test::new_length(*all.layout, job.rolls) <=
                  times * test::new_length(*one.layout, once.rolls));
            for (const std::string& fault :
                 test::faults_of(*all.layout, job.pieces, job.rolls, job.goal))
                FAIL_CHECK(fault);
        }
    }
}

TEST_CASE("film that is too short for hundreds of pieces is no layout, and no crash") {
    Job job = job_of(13, 15, 20, 3'000'000);
    job.rolls.resize(2);
    const nest::Result result = nest::nest(job.pieces, job.rolls, job.goal, {1, 2, 1}, {});
    CHECK(!result.layout);
}

} // namespace
} // namespace pelt
