// SPDX-License-Identifier: MIT
// Whole jobs made up at random, run through the program: whatever a vehicle, a film, a shelf and a
// command line say, pelt ends as its manual says, and its formats tell the same right sheet.
// tests/generated/many runs more of them, and keeps the files of those that fail.
#include "asked_jobs.hpp"
#include "trial.hpp"

#include <doctest/doctest.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>

namespace pelt::generated {
namespace {

constexpr int most_seconds = 120;   ///< of processor time: what takes longer hangs
constexpr double slow_seconds = 10; ///< told, but no fault: machines differ

void keep_files(const Job& job, const Outputs& outputs, const Complaints& complaints) {
    const char* folder = std::getenv("PELT_FAILED_JOBS");
    if (folder == nullptr)
        return;
    const auto own = std::filesystem::path(folder) / std::to_string(job.seed);
    std::filesystem::create_directories(own);
    const auto write = [&](const std::string& name, const std::string& bytes) {
        std::ofstream(own / name, std::ios::binary) << bytes;
    };
    for (const auto& [name, bytes] : job.files)
        write(name, bytes);
    const std::string text = text_of(job);
    write("command", text.substr(text.rfind("== run\n") + 7));
    write("complaints", listed(complaints, "\n") + "\n" + outputs.errors);
}

void tell_failure(const Job& job, const Outputs& outputs, const Complaints& complaints) {
    keep_files(job, outputs, complaints);
    if (std::getenv("PELT_FAILED_JOBS") != nullptr)
        std::printf("job %llu: %s\n", static_cast<unsigned long long>(job.seed),
                    listed(complaints, "; ").c_str());
    else
        std::printf("job %llu: %s\n%s%s\n", static_cast<unsigned long long>(job.seed),
                    listed(complaints, "; ").c_str(), text_of(job).c_str(), outputs.errors.c_str());
    std::fflush(stdout);
}

struct Tally {
    int jobs = 0;
    std::map<int, int> statuses; ///< of jobs that were not broken on purpose
    int failed = 0;
    int slow = 0;
    double slowest = 0;
};

void run_job(int seed, Tally& tally) {
    const Job job = draw_job(static_cast<std::uint64_t>(seed));
    const Outputs outputs = run(job, most_seconds);
    const Complaints complaints = complaints_about(job, outputs);
    ++tally.jobs;
    if (job.spoilt == Spoilt::no)
        ++tally.statuses[outputs.status];
    tally.slowest = std::max(tally.slowest, outputs.cpu_seconds);
    if (outputs.cpu_seconds > slow_seconds) {
        ++tally.slow;
        std::printf("job %d took %.1f s\n", seed, outputs.cpu_seconds);
        keep_files(job, outputs, {"slow"});
    }
    if (complaints.empty())
        return;
    ++tally.failed;
    tell_failure(job, outputs, complaints);
}

Tally run_jobs(int first, int count) {
    Tally tally;
    for (int i = 0; i < count; ++i)
        run_job(first + i, tally);
    std::printf("jobs %d to %d: failed %d, slow %d, slowest %.1f s", first, first + count - 1,
                tally.failed, tally.slow, tally.slowest);
    for (const auto& [status, number] : tally.statuses)
        std::printf(", status %d: %d", status, number);
    std::printf("\n");
    return tally;
}

/// Most jobs are such as people bring, few are wrong without being meant to be.
void check_quarter(int quarter) {
    constexpr int jobs = 75; // tests/generated/many runs more
    Tally tally = run_jobs(1 + quarter * jobs, jobs);
    CHECK(tally.failed == 0);
    CHECK(tally.statuses[0] * 10 >= jobs * 6);
    CHECK((tally.statuses[2] + tally.statuses[3]) * 10 <= jobs);
}

// Four, so that they run at the same time.
TEST_CASE("generated jobs end as the manual says, and their formats agree: 1 to 75") {
    check_quarter(0);
}
TEST_CASE("generated jobs end as the manual says, and their formats agree: 76 to 150") {
    check_quarter(1);
}
TEST_CASE("generated jobs end as the manual says, and their formats agree: 151 to 225") {
    check_quarter(2);
}
TEST_CASE("generated jobs end as the manual says, and their formats agree: 226 to 300") {
    check_quarter(3);
}

TEST_CASE("generated jobs, as many as are asked for" * doctest::skip()) {
    const int first = test::asked_jobs("PELT_FIRST_JOB", 1);
    CHECK(run_jobs(first, test::asked_jobs("PELT_RANDOM_JOBS", 1)).failed == 0);
}

TEST_CASE("the same seed is the same job") {
    for (const std::uint64_t seed : {1U, 77U, 4'711U})
        CHECK(text_of(draw_job(seed)) == text_of(draw_job(seed)));
    CHECK(text_of(draw_job(1)) != text_of(draw_job(2)));
}

} // namespace
} // namespace pelt::generated
