// SPDX-License-Identifier: MIT
// Whether a length is what a body of its kind usually takes (trade/bodies.hpp: common practice, no
// source): an assumption that looks for missing panels and slips of units, never a check.
#pragma once

#include "model/vehicle.hpp"
#include "report/numbers.hpp"
#include "report/report.hpp"

#include <optional>
#include <string>

namespace pelt::report {

/// One line for the sheet; none where a vehicle has no known body, panels other than extras are
/// left out, the film is cut along outlines (what is known is of straight cuts), or the film is narrower than 1.37 m or wider than 1.67 m.
std::optional<std::string> plausibility(const Plan& plan, const Measures& measures);
/// Under 75 % or over 130 % of that; none where it is usual, or nothing is known.
enum class Unusual { little, much };
std::optional<Unusual> how_unusual(const Plan& plan);

} // namespace pelt::report
