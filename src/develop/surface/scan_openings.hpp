// SPDX-License-Identifier: MIT
// Which hole of a scan an opening of its panel is. Inside develop/ only.
#pragma once

#include "model/fault.hpp"
#include "model/vehicle.hpp"

#include <cstddef>
#include <vector>

namespace pelt::develop {

/// The loop of the scan that each opening of the panel is, in their order. Faults where one is none
/// or the same as another; a warning where a hole that one can see has no opening.
std::vector<std::size_t> loops_of_openings(const Panel& panel, const Surface& scan, Faults& faults);

} // namespace pelt::develop
