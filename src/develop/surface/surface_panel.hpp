// SPDX-License-Identifier: MIT
// A scanned panel to its blank. Inside develop/ only.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"

#include <optional>

namespace pelt::develop {

/// Lays the scan flat for film that gives `limit` (a share; none: as it lies by itself), turned as
/// the drawing is, its lower left at (0, 0), snapped to the grid; finds its edges and openings, and
/// the stretch it asks. Faults leave no blank.
void develop_surface(const SurfaceForm& form, const Panel& panel, std::optional<double> limit,
                     DevelopedPanel& out, Faults& faults);

} // namespace pelt::develop
