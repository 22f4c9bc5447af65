// SPDX-License-Identifier: MIT
// What a sheet says of wrong tape readings.
#pragma once

#include "report/json_text.hpp"
#include "report/numbers.hpp"
#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// How far readings may be off. Nothing where they are taken as exact.
std::vector<std::string> measuring_error(const Job& job, const Measures& measures);

/// Which panels move the length most. Nothing where readings are taken as exact.
std::vector<std::string> measure_twice(const Sheet& sheet, const Measures& measures);

/// Null where readings are taken as exact.
Json measuring(const Sheet& sheet);

} // namespace pelt::report
