// SPDX-License-Identifier: MIT
// One panel of a vehicle file. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/context.hpp"
#include "read/yaml.hpp"

namespace pelt::read {

/// Reads a panel; what is wrong is told with its name.
Panel read_panel(const Entry& entry, Context& context);

} // namespace pelt::read
