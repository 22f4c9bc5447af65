// SPDX-License-Identifier: MIT
// One panel as it was measured.
#pragma once

#include "model/vehicle.hpp"
#include "report/draw/picture.hpp"
#include "report/numbers.hpp"

namespace pelt::report {

/// In true size, small panels a whole number of times as large, which the title then says.
draw::Picture measured_panel(const Panel& panel, const Measures& measures);

} // namespace pelt::report
