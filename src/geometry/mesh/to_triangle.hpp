// SPDX-License-Identifier: MIT
#pragma once

#include "model/surface.hpp"

#include <array>

namespace pelt::geometry {

/// The distance from a point to a triangle with an area (C. Ericson 2004, closest points by
/// regions).
double to_triangle(Point3 p, const std::array<Point3, 3>& corners);

} // namespace pelt::geometry
