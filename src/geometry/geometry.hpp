// SPDX-License-Identifier: MIT
// Plane geometry on the grid: booleans, grown outlines, predicates. Points, rings, areas and
// transforms are plain types of model/polygon.hpp.
#pragma once

#include "model/polygon.hpp"

#include <vector>

namespace pelt::geometry {

/// The region where the curves wind around at least once counter-clockwise.
std::vector<Polygon> positive_union(const std::vector<Ring>& curves);

} // namespace pelt::geometry
