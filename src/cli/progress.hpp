// SPDX-License-Identifier: MIT
// One line on the terminal while a search runs.
#pragma once

#include "nest/nest.hpp"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace pelt::cli {

/// "laying out: 37 %, about 4 s left; 14.21 m so far, 13.89 m at least", cut to `columns`.
std::string progress_text(const nest::Progress& progress, std::optional<double> seconds_left,
                          std::size_t columns);

/// Shows nothing in the first half second, then at most ten updates a second, and is erased at the
/// end. What is left of a search is estimated from its own share of the work and its own time.
/// Without a sink it shows nothing at all.
class ProgressLine {
public:
    using Sink = std::function<void(std::string_view)>;

    ProgressLine(Sink sink, std::size_t columns);
    void show(const nest::Progress& progress, double seconds);
    void erase();

private:
    Sink sink_;
    std::size_t columns_;
    double next_ = 0.5;
    double began_ = 0; ///< when this search began
    double share_ = 0; ///< of it, so far
    bool shown_ = false;
};

/// The width of the terminal behind a descriptor; 80 where it does not say.
std::size_t terminal_columns(int descriptor);

} // namespace pelt::cli
