// SPDX-License-Identifier: MIT
// What a sheet says of spare film.
#pragma once

#include "report/numbers.hpp"
#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// "95 of 100 jobs", rounded down; in thousands or ten thousands of jobs where that tells more.
std::string of_jobs(double percent);

/// How much is spare, how often it suffices, which panel asks for most of it. Nothing where no
/// spare was asked for.
std::vector<std::string> about_the_spare(const Sheet& sheet, const Measures& measures);

/// How often the panels are taken to be spoilt: by the vehicle file, and assumed.
std::vector<std::string> how_often_spoilt(const Sheet& sheet);

} // namespace pelt::report
