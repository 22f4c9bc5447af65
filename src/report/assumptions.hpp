// SPDX-License-Identifier: MIT
#pragma once

#include "report/numbers.hpp"
#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// What the sheet takes for granted: parts off or left on, what is not included, margins, seams.
std::vector<std::string> assumptions(const Sheet& sheet, const Measures& measures);

} // namespace pelt::report
