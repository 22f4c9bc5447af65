// SPDX-License-Identifier: MIT
// What is asked while a search runs: has it been stopped, is its time up, what to show meanwhile.
#pragma once

#include "cli/interrupt.hpp"
#include "cli/progress.hpp"
#include "nest/nest.hpp"

#include <chrono>
#include <optional>

namespace pelt::cli {

class SearchWatch {
public:
    enum class StoppedBy { nothing, time, interrupt };

    SearchWatch(std::optional<double> seconds, ProgressLine line);
    ~SearchWatch() { finish(); }
    SearchWatch(const SearchWatch&) = delete;
    SearchWatch& operator=(const SearchWatch&) = delete;

    /// False once the search should end.
    bool go_on(const nest::Progress& progress);
    /// What ended it; asked after the search.
    StoppedBy stopped_by() const;
    bool interrupted() const { return interrupt_.interrupted(); }
    /// Takes the progress line away.
    void finish() { line_.erase(); }

private:
    using Clock = std::chrono::steady_clock;

    nest::Progress with_time(nest::Progress progress, Clock::time_point now) const;

    InterruptWatch interrupt_;
    Clock::time_point start_ = Clock::now();
    std::optional<Clock::time_point> end_;
    bool time_is_up_ = false;
    ProgressLine line_;
};

} // namespace pelt::cli
