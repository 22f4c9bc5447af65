// SPDX-License-Identifier: MIT
// Panels measured by girths along a spine. Inside develop/ only.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"

namespace pelt::develop {

/// The outline between the upper and the lower girths, with the edges bottom, end, top, start; an
/// end of no width has no edge. Stations that are out of order or leave no width between the ends
/// are faults: then the blank is empty. Its stretch stays unknown: girths between a panel's edges
/// cannot tell its shape from its curvature, and equal ones bound nothing.
Blank blank_of(const GirthsForm& form, const Panel& panel, Faults& faults);

} // namespace pelt::develop
