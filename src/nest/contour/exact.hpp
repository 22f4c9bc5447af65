// SPDX-License-Identifier: MIT
// Whether two cut outlines keep their distance, in whole numbers.
#pragma once

#include "model/polygon.hpp"

namespace pelt::nest::contour {

/// True when the insides of two polygons have no point in common and no two points of them are
/// nearer than `gap`. Touching is allowed at gap 0. Exact for coordinates below 2^28 apart.
bool keeps_clear(const Polygon& a, const Polygon& b, Um gap);

} // namespace pelt::nest::contour
