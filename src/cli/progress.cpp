// SPDX-License-Identifier: MIT
#include "cli/progress.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::cli {
namespace {

constexpr Um um_per_cm = 10'000;

std::string metres(Um cm) {
    const std::string rest = std::to_string(cm % 100);
    return std::to_string(cm / 100) + "." + (rest.size() < 2 ? "0" : "") + rest + " m";
}

/// A length is never shown shorter than it is.
std::string metres_up(Um length) {
    return metres((length + um_per_cm - 1) / um_per_cm);
}

/// A bound is never shown longer than it is.
std::string metres_down(Um bound) {
    return metres(bound / um_per_cm);
}

} // namespace

std::string progress_text(const nest::Progress& progress, std::optional<double> seconds_left,
                          std::size_t columns) {
    const double share = std::clamp(progress.share, 0.0, 1.0);
    std::string text = progress.doing.empty() ? "" : std::string(progress.doing) + ": ";
    text += std::to_string(static_cast<int>(share * 100)) + " %";
    if (seconds_left)
        text += ", about " + std::to_string(std::llround(std::ceil(*seconds_left))) + " s left";
    if (progress.best > 0)
        text += "; " + metres_up(progress.best) + " so far";
    if (progress.best > 0 && progress.bound > 0)
        text += ", " + metres_down(progress.bound) + " at least";
    return text.substr(0, columns);
}

ProgressLine::ProgressLine(Sink sink, std::size_t columns)
    : sink_(std::move(sink)), columns_(columns) {}

void ProgressLine::show(const nest::Progress& progress, double seconds) {
    if (!sink_)
        return;
    if (progress.share < share_)
        began_ = seconds;
    share_ = progress.share;
    if (seconds < next_)
        return;
    next_ = seconds + 0.1;
    shown_ = true;
    // Too early, and the estimate is a guess.
    const std::optional<double> left =
        share_ > 0.05 && share_ <= 1 ? std::optional((seconds - began_) * (1 - share_) / share_)
                                     : std::nullopt;
    // CSI K clears what a longer line has left (ECMA-48, EL).
    sink_("\r" + progress_text(progress, left, columns_ - 1) + "\x1b[K");
}

void ProgressLine::erase() {
    if (shown_)
        sink_("\r\x1b[K");
    shown_ = false;
}

std::size_t terminal_columns(int descriptor) {
    struct winsize size {};
    const bool known = ::ioctl(descriptor, TIOCGWINSZ, &size) == 0 && size.ws_col > 20;
    return known ? size.ws_col : 80;
}

} // namespace pelt::cli
