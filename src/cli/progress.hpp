// SPDX-License-Identifier: MIT
// One line on the terminal while a search runs.
#pragma once

#include "nest/nest.hpp"

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

namespace pelt::cli {

/// "37 %  14.21 m so far, none can be shorter than 13.89 m", cut to `columns`.
std::string progress_text(const nest::Progress& progress, std::size_t columns);

/// Shows nothing in the first 0.3 s, then at most ten updates a second, and is erased at the end.
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
    double next_ = 0.3;
    bool shown_ = false;
};

/// The width of the terminal behind a descriptor; 80 where it does not say.
std::size_t terminal_columns(int descriptor);

} // namespace pelt::cli
