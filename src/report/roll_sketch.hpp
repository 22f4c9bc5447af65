// SPDX-License-Identifier: MIT
// From a plan to the drawing of one of its rolls.
#pragma once

#include "report/numbers.hpp"
#include "report/report.hpp"
#include "report/roll_text.hpp"

#include <cstddef>

namespace pelt::report {

RollSketch sketch_of(const Sheet& sheet, std::size_t used_roll, const Measures& measures);

} // namespace pelt::report
