// SPDX-License-Identifier: MIT
// From a panel as measured to a flat blank in true lengths.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"

namespace pelt::develop {

/// Develops one panel. Mistakes that show only here are added to `faults`; then the result has no
/// blanks.
DevelopedPanel develop(const Panel& panel, Faults& faults);

} // namespace pelt::develop
