// SPDX-License-Identifier: MIT
// What can hurt people or the vehicle, in short. Temperatures, torques and procedures for airbags
// and high voltage are never printed: they are the makers'.
#pragma once

#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// One block for the end of every sheet: what is always true, then what this job calls for.
std::vector<std::string> cautions(const Sheet& sheet);

/// What can hurt those who take parts off.
std::vector<std::string> cautions_of_taking_off(const StripSheet& sheet);

} // namespace pelt::report
