// SPDX-License-Identifier: MIT
// What a sheet says in the middle of a job.
#pragma once

#include "report/json_text.hpp"
#include "report/numbers.hpp"
#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// What is on the vehicle already, and what is cut again. Nothing where no work is half done.
std::vector<std::string> what_is_done(const Job& job);

/// Whether what is left is enough; what is missing.
std::vector<std::string> whether_it_is_enough(const Sheet& sheet, const Measures& measures);

/// Null where no work is half done.
Json half_done(const Sheet& sheet);

} // namespace pelt::report
