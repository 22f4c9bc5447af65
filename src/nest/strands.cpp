// SPDX-License-Identifier: MIT
#include "nest/strands.hpp"

#include <algorithm>
#include <atomic>
#include <exception>
#include <thread>
#include <vector>

namespace pelt::nest {

void run_all(std::size_t count, int threads, const std::function<void(std::size_t)>& task) {
    std::vector<std::exception_ptr> failures(count);
    std::atomic<std::size_t> next{0};
    const auto take = [&] {
        for (std::size_t i = next++; i < count; i = next++)
            try {
                task(i);
            } catch (...) {
                failures[i] = std::current_exception();
            }
    };
    const std::size_t helpers = std::min(count, static_cast<std::size_t>(std::max(threads, 1))) - 1;
    {
        std::vector<std::jthread> pool;
        for (std::size_t i = 0; i < helpers; ++i)
            pool.emplace_back(take);
        take();
    }
    for (const std::exception_ptr& failure : failures)
        if (failure)
            std::rethrow_exception(failure);
}

} // namespace pelt::nest
