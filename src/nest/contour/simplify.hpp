// SPDX-License-Identifier: MIT
// Outlines with fewer points that still cover the outline they stand for.
#pragma once

#include "model/polygon.hpp"

namespace pelt::nest::contour {

/// A polygon that contains `polygon`: outer rings only grow, holes only shrink. No single step adds
/// more than `depth` micrometres; steps stop once at most `enough` points are left, except those
/// that add less than `free_depth`.
Polygon simplified(const Polygon& polygon, double depth, std::size_t enough, double free_depth);

} // namespace pelt::nest::contour
