// SPDX-License-Identifier: MIT
#include "model/parallel.hpp"

#include <doctest/doctest.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <stdexcept>
#include <thread>
#include <vector>

using pelt::run_all;

TEST_CASE("every task runs once, on any number of threads") {
    for (const int threads : {-1, 0, 1, 2, 7, 200}) {
        CAPTURE(threads);
        std::vector<int> runs(50, 0);
        run_all(runs.size(), threads, [&](std::size_t i) { ++runs[i]; });
        CHECK(runs == std::vector<int>(50, 1));
    }
}

TEST_CASE("no tasks: nothing runs") {
    int runs = 0;
    run_all(0, 4, [&](std::size_t) { ++runs; });
    CHECK(runs == 0);
}

TEST_CASE("the first task runs on the calling thread") {
    std::vector<std::thread::id> on(20);
    run_all(on.size(), 4, [&](std::size_t i) { on[i] = std::this_thread::get_id(); });
    CHECK(on.front() == std::this_thread::get_id());
}

TEST_CASE("of several failures the lowest-numbered is told, and the others still run") {
    std::atomic<int> runs = 0;
    const auto task = [&](std::size_t i) {
        ++runs;
        if (i == 3 || i == 11)
            throw std::runtime_error(std::to_string(i));
    };
    CHECK_THROWS_WITH_AS(run_all(20, 4, task), "3", std::runtime_error);
    CHECK(runs == 20);
}

TEST_CASE("where the system refuses threads, all tasks run on those that there are") {
    // In a process of its own, since a limit on memory cannot be taken back everywhere.
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        // Too little address space for the stack of one more thread.
        const rlimit little{4U << 20U, 4U << 20U};
        setrlimit(RLIMIT_AS, &little);
        std::atomic<int> runs = 0;
        run_all(8, 8, [&](std::size_t) { ++runs; });
        _exit(runs == 8 ? 0 : 1);
    }
    int status = 0;
    REQUIRE(waitpid(child, &status, 0) == child);
    CHECK(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 0);
}
