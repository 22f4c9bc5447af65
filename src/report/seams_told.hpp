// SPDX-License-Identifier: MIT
// What the sheet says of seams that are not the vehicle file's: how to keep them, and what would be
// bought without them or with others. Inside report/ only.
#pragma once

#include "report/numbers.hpp"
#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// A line a panel, in the drawing's own coordinates and the vehicle file's unit:
/// "front bumper: seam lines: [{line: [[1177, -60], [1177, 640]], use: always}]".
std::vector<std::string> seam_lines_to_copy(const Sheet& sheet);

/// How divided panels could be cut otherwise, and what is then bought.
std::vector<std::string> divided_otherwise(const Sheet& sheet, const Measures& measures);

/// What narrow margins on flat panels would save, where that is a step of what is sold.
std::vector<std::string> narrow_margins_save(const Sheet& sheet, const Measures& measures);

} // namespace pelt::report
