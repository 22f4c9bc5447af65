// SPDX-License-Identifier: MIT
#include "cli/run_time.hpp"

#include "cli/values.hpp"

#include <algorithm>

namespace pelt::cli {

RunTime::RunTime(const Arguments& arguments) {
    if (const auto time = arguments.value(Opt::time))
        seconds_ = seconds(*time);
}

std::optional<double> RunTime::left() const {
    if (!seconds_)
        return std::nullopt;
    const std::chrono::duration<double> gone = std::chrono::steady_clock::now() - start_;
    return std::max(*seconds_ - gone.count(), 0.0);
}

std::optional<double> RunTime::share_of(std::size_t searches) const {
    const auto all = left();
    return all ? std::optional(*all / static_cast<double>(std::max<std::size_t>(searches, 1)))
               : std::nullopt;
}

} // namespace pelt::cli
