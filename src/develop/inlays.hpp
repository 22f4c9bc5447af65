// SPDX-License-Identifier: MIT
// Recesses with a piece of their own. Inside develop/ only.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"

namespace pelt::develop {

/// The panel's inlays, every coordinate multiplied by `scale`, put into the blank. An inlay that
/// runs out of the panel, or into an opening or another inlay, is a fault.
void add_inlays(const Panel& panel, Point scale, Blank& blank, Faults& faults);

} // namespace pelt::develop
