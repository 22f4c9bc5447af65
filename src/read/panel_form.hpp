// SPDX-License-Identifier: MIT
// The form of a panel: outline, size or girths, its crown. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/fields.hpp"

namespace pelt::read {

/// Exactly one form, and what goes with it.
void read_form(const Fields& fields, Panel& panel, Context& context);

} // namespace pelt::read
