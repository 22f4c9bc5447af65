// SPDX-License-Identifier: MIT
// Parts that come off before wrapping. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/fields.hpp"

namespace pelt::read {

/// Reads `hardware` and checks what refers to it: every `behind` and `after` names a part that is
/// there, and no part waits for itself.
void read_hardware(const Fields& file, Vehicle& vehicle, Context& context);

} // namespace pelt::read
