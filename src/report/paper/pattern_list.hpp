// SPDX-License-Identifier: MIT
// What is drawn in full size. Inside paper/ only.
#pragma once

#include "report/draw/picture.hpp"
#include "report/numbers.hpp"
#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report::paper {

/// What is drawn of one piece: its own frame in millimetres, y down, from its upper left corner.
struct Pattern {
    std::string title;
    std::vector<draw::Path> paths; ///< the cut outline, then what stays on
    double width = 0;
    double height = 0;
};

/// Pieces that are cut alike are one pattern.
std::vector<Pattern> patterns_of(const Sheet& sheet, const Measures& measures);

} // namespace pelt::report::paper
