// SPDX-License-Identifier: MIT
// Whole jobs made up at random, run through the program: whatever a vehicle, a film, a shelf and a
// command line say, pelt ends as its manual says, and its formats tell the same right sheet.
//   PELT_RANDOM_JOBS=10000 test_generated     more of them
//   PELT_FIRST_JOB=5001                       from this one on
//   PELT_FAILED_JOBS=FOLDER                   writes the files of those that fail into FOLDER/SEED
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

constexpr int first_job = 1;
constexpr int jobs_of_a_test_run = 75; ///< half a minute
constexpr int most_seconds = 120;      ///< of processor time: what takes longer hangs
constexpr double slow_seconds = 10;    ///< told, but no fault: machines differ

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

TEST_CASE("generated jobs: an expected status, a right sheet, formats that agree") {
    const bool asked = std::getenv("PELT_RANDOM_JOBS") != nullptr;
    const int jobs = asked ? test::asked_jobs("PELT_RANDOM_JOBS", 1) : jobs_of_a_test_run;
    const int first = test::asked_jobs("PELT_FIRST_JOB", first_job);
    std::map<int, int> statuses;
    int failed = 0;
    int slow = 0;
    double slowest = 0;
    for (int i = 0; i < jobs; ++i) {
        const Job job = draw_job(static_cast<std::uint64_t>(first) + static_cast<std::uint64_t>(i));
        const Outputs outputs = run(job, most_seconds);
        const Complaints complaints = complaints_about(job, outputs);
        if (job.spoilt == Spoilt::no)
            ++statuses[outputs.status];
        slowest = std::max(slowest, outputs.cpu_seconds);
        if (outputs.cpu_seconds > slow_seconds) {
            ++slow;
            std::printf("job %d took %.1f s\n", first + i, outputs.cpu_seconds);
        }
        if (complaints.empty())
            continue;
        ++failed;
        tell_failure(job, outputs, complaints);
    }
    for (const auto& [status, count] : statuses)
        MESSAGE("status ", status, ": ", count, " of ", jobs);
    MESSAGE("slow: ", slow, ", slowest: ", slowest, " s");
    CHECK(failed == 0);
    const int wrong = statuses[2] + statuses[3];
    CHECK(statuses[0] * 10 >= jobs * 5); // most jobs are such as people bring
    CHECK(wrong * 10 <= jobs * 3);
}

TEST_CASE("the same seed is the same job") {
    for (const std::uint64_t seed : {1U, 77U, 4'711U})
        CHECK(text_of(draw_job(seed)) == text_of(draw_job(seed)));
    CHECK(text_of(draw_job(1)) != text_of(draw_job(2)));
}

} // namespace
} // namespace pelt::generated
