// SPDX-License-Identifier: MIT
#include "model/parallel.hpp"

#include <algorithm>
#include <atomic>
#include <exception>
#include <system_error>
#include <thread>
#include <vector>

namespace pelt {
namespace {

/// Starts `count` threads that all do `work`, or as many as the system gives.
std::vector<std::jthread> started(std::size_t count, const std::function<void()>& work) {
    std::vector<std::jthread> pool;
    pool.reserve(count);
    try {
        for (std::size_t i = 0; i < count; ++i)
            pool.emplace_back(work);
    } catch (const std::system_error&) {
        // A limit on processes or memory: the calling thread does what is left.
    }
    return pool;
}

} // namespace

void run_all(std::size_t count, int threads, const std::function<void(std::size_t)>& task) {
    if (count == 0)
        return;
    std::vector<std::exception_ptr> failures(count);
    const auto run = [&](std::size_t i) {
        try {
            task(i);
        } catch (...) {
            failures[i] = std::current_exception();
        }
    };
    std::atomic<std::size_t> next{1};
    const std::function<void()> take = [&] {
        for (std::size_t i = next++; i < count; i = next++)
            run(i);
    };
    {
        const std::vector<std::jthread> helpers =
            started(std::min(count, static_cast<std::size_t>(std::max(threads, 1))) - 1, take);
        run(0);
        take();
    }
    for (const std::exception_ptr& failure : failures)
        if (failure)
            std::rethrow_exception(failure);
}

} // namespace pelt
