// SPDX-License-Identifier: MIT
// A scanned panel to its blank. Inside develop/ only.
#pragma once

#include "develop/develop.hpp"
#include "model/blank.hpp"
#include "model/vehicle.hpp"

namespace pelt::develop {

/// Lays the scan flat, turned as the drawing is, its lower left at (0, 0), snapped to the grid;
/// finds its edges and openings, and the stretch it asks. Faults leave no blank.
void develop_surface(const SurfaceForm& form, const Panel& panel, const Purpose& purpose,
                     DevelopedPanel& out, Faults& faults);

} // namespace pelt::develop
