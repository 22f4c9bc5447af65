// SPDX-License-Identifier: MIT
// The cut list as a person with a knife reads it: whatever rectangles, rolls and rules the straight
// engine is given, the check's own replay of its cuts frees every piece.
//   PELT_RANDOM_JOBS=10000 test_verify -tc="random straight*"    more of them
#include "asked_jobs.hpp"
#include "nest/straight/random_job.hpp"
#include "verify/checks.hpp"

#include <doctest/doctest.h>

namespace pelt {
namespace {

/// What the replay looks at; the pieces come from no vehicle, so the other checks have nothing to
/// say.
Job job_of(const test::RandomJob& random) {
    Job job;
    job.vehicles.emplace_back();
    job.pieces = random.pieces;
    job.rolls = random.rolls;
    job.film.allowances.ruler = random.goal.ruler;
    job.stages = random.goal.stages;
    job.table = random.goal.table;
    job.in_order = random.goal.in_order;
    job.laying = random.goal.laying;
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        job.vehicles.front().panels.emplace_back();
        job.vehicles.front().panels.back().name = "p" + std::to_string(i);
    }
    return job;
}

void expect_all_freed(const test::RandomJob& random, const Layout& layout) {
    const Job job = job_of(random);
    verify::Sentences faults;
    verify::check_cuts(job, layout, faults);
    for (const std::string& fault : faults)
        FAIL_CHECK(fault);
}

TEST_CASE("random straight jobs: the cut list frees every piece") {
    const int jobs = test::asked_jobs("PELT_RANDOM_JOBS", 150);
    for (int i = 0; i < jobs; ++i) {
        const auto seed = 20'001 + static_cast<std::uint64_t>(i);
        CAPTURE(seed);
        test::RandomJob random = test::random_job(seed);
        test::lay_in_random_order(random, seed);
        random.goal.in_order = i % 4 == 0;
        const nest::Result result =
            nest::nest(random.pieces, random.rolls, random.goal, {1, 1, seed}, {});
        if (!result.layout && random.goal.in_order)
            continue; // the stock was used up by pieces that another order keeps it for
        REQUIRE(result.layout);
        expect_all_freed(random, *result.layout);
    }
}

} // namespace
} // namespace pelt
