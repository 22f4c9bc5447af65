// SPDX-License-Identifier: MIT
#include "cli/search_watch.hpp"

#include <algorithm>
#include <utility>

namespace pelt::cli {

SearchWatch::SearchWatch(std::optional<double> seconds, ProgressLine line)
    : line_(std::move(line)) {
    if (seconds)
        end_ = start_ +
               std::chrono::duration_cast<Clock::duration>(std::chrono::duration<double>(*seconds));
}

bool SearchWatch::go_on(const nest::Progress& progress) {
    const Clock::time_point now = Clock::now();
    time_is_up_ = time_is_up_ || (end_ && now >= *end_);
    line_.show(with_time(progress, now), std::chrono::duration<double>(now - start_).count());
    return !time_is_up_ && !interrupt_.interrupted();
}

/// Where there is a time limit, its share counts as well.
nest::Progress SearchWatch::with_time(nest::Progress progress, Clock::time_point now) const {
    if (end_ && *end_ > start_)
        progress.share =
            std::max(progress.share, std::chrono::duration<double>(now - start_) /
                                         std::chrono::duration<double>(*end_ - start_));
    return progress;
}

SearchWatch::StoppedBy SearchWatch::stopped_by() const {
    if (interrupt_.interrupted())
        return StoppedBy::interrupt;
    return time_is_up_ ? StoppedBy::time : StoppedBy::nothing;
}

} // namespace pelt::cli
