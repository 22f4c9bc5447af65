// SPDX-License-Identifier: MIT
// Where on a blank the film stretches, and which way. Inside develop/ only.
#pragma once

#include "develop/surface/flatten.hpp"
#include "model/blank.hpp"

namespace pelt::develop {

/// The stretch of every triangle of the surface's own in a layout, film taken from the layout to
/// the surface, and the triangle where it is largest.
StretchMap map_of(const Sheet3& sheet, const Patch& patch, const Flat& flat);

} // namespace pelt::develop
