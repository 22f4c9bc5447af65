// SPDX-License-Identifier: MIT
// A scan's layout turned the way its drawing is. Inside develop/ only.
#pragma once

#include "develop/surface/flatten.hpp"
#include "model/vehicle.hpp"

namespace pelt::develop {

/// The layout turned so that the drawing's way up is up on the whole, its lower left at 0.
Flat as_drawn(const Sheet3& sheet, const Patch& patch, const SurfaceForm& form, Flat flat);

} // namespace pelt::develop
