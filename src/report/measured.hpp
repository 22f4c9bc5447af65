// SPDX-License-Identifier: MIT
// Panels drawn as they were measured, so that a person sees whether the file says what the tape
// said.
#pragma once

#include "model/vehicle.hpp"
#include "report/numbers.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// Every panel of the vehicles, one millimetre a user unit (small ones enlarged, and said so):
/// corners by number and place, edges by name, openings, seams, inlays, girths, the way forward;
/// beside it the two sections of a crown with the straightedge and the rise. Scans are named, not
/// drawn.
std::string measured_svg(const std::vector<Vehicle>& vehicles, Unit unit);

} // namespace pelt::report
