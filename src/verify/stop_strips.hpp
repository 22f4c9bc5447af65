// SPDX-License-Identifier: MIT
// What stops take from the film: a strip along every edge with a stop, and at its ends what lies
// beyond its line of the tucks beside it. Inside verify/ only.
#pragma once

#include "model/polygon.hpp"
#include "verify/sides.hpp"

#include <vector>

namespace pelt::verify {

/// Counter-clockwise figures, millimetres; where one of them winds there is no film. Beyond an
/// outward corner the line of a stop goes straight on until it has left the tucks of the
/// neighbours, unless that is farther than twice the tuck and the stop together.
std::vector<std::vector<Point>> stop_strips(const std::vector<MovedSide>& sides);

} // namespace pelt::verify
