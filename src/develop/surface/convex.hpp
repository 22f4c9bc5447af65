// SPDX-License-Identifier: MIT
// Inside develop/ only.
#pragma once

#include "model/polygon.hpp"

#include <vector>

namespace pelt::develop {

/// Convex within a fiftieth of its area: there the roof bound holds.
bool nearly_convex(const std::vector<Point>& ring);

} // namespace pelt::develop
