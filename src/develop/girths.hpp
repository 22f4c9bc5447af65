// SPDX-License-Identifier: MIT
// Panels measured by girths along a spine. Inside develop/ only.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"

namespace pelt::develop {

/// The outline between the upper and the lower girths, with the edges bottom, end, top, start; an
/// end of no width has no edge. Stations that are out of order or leave no width between the ends
/// are faults: then the blank is empty.
Blank blank_of(const GirthsForm& form, const Panel& panel, Faults& faults);

/// What the panel asks of the film by the rises over its spine and over the girth at its middle, as
/// for a crown measured over the surface. Unknown without them: girths between a panel's edges
/// cannot tell its shape from its curvature, and equal ones bound nothing. A rise that no bow of
/// that length has is a fault. The stations are right.
StretchAsked stretch_of(const GirthsForm& form, const Panel& panel, Faults& faults);

} // namespace pelt::develop
