// SPDX-License-Identifier: MIT
// Panels measured by girths along a spine. Inside develop/ only.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"

#include <optional>

namespace pelt::develop {

/// The outline between the upper and the lower girths, with the edges bottom, end, top, start; an
/// end of no width has no edge. Stations that are out of order or leave no width between the ends
/// are faults: then the blank is empty.
Blank blank_of(const GirthsForm& form, const Panel& panel, Faults& faults);

/// The ratio between the longest and the shortest of the girths against rows that widen evenly
/// along the spine, at the best: less 1 an upper bound of the stretch. None where the panel ends in
/// a point.
std::optional<double> stretch_at_most(const GirthsForm& form);

} // namespace pelt::develop
