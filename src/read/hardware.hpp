// SPDX-License-Identifier: MIT
// Parts that come off before wrapping. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/fields.hpp"
#include "read/names.hpp"

#include <vector>

namespace pelt::read {

/// The names under `hardware`, before anything that refers to them is read.
Names hardware_names(const Fields& vehicle);

/// Reads `hardware`. Tells parts that come after unknown ones or, round about, after themselves.
std::vector<Hardware> read_hardware(const Fields& vehicle, const Names& names, Context& context);

/// Tells what parts name as `with` and is no panel, no group and no side of a panel.
void check_with(const std::vector<Hardware>& parts, const std::vector<Panel>& panels,
                Context& context);

} // namespace pelt::read
