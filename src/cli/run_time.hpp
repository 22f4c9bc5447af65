// SPDX-License-Identifier: MIT
// What is left of `--time`, which is the whole run's. Inside cli/ only.
#pragma once

#include "cli/parse.hpp"

#include <chrono>
#include <cstddef>
#include <optional>

namespace pelt::cli {

class RunTime {
public:
    /// Runs from now on.
    explicit RunTime(const Arguments& arguments);

    /// Seconds, never below 0; none: there is no limit.
    std::optional<double> left() const;
    /// Of what is left, for the next of so many searches.
    std::optional<double> share_of(std::size_t searches) const;
    bool is_over() const { return left() == 0.0; }

private:
    std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
    std::optional<double> seconds_;
};

} // namespace pelt::cli
