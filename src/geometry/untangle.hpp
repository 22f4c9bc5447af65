// SPDX-License-Identifier: MIT
// Figures whose rings nowhere touch themselves or one another. Inside geometry/ only.
#pragma once

#include "model/polygon.hpp"

#include <vector>

namespace pelt::geometry {

/// A point where two sides of the figure's rings touch or cross though they should not, to the
/// nearest micrometre; nothing when its rings are simple and apart.
std::vector<GridPoint> contact_in(const Polygon& polygon);

/// A square of a few micrometres to take out of a figure there: what only touched is then apart.
Ring notch_at(GridPoint contact);

} // namespace pelt::geometry
