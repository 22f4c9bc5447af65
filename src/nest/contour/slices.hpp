// SPDX-License-Identifier: MIT
// How much of a line across the film each shape takes, place by place along the film.
#pragma once

#include "model/polygon.hpp"

#include <vector>

namespace pelt::nest::contour {

/// A stretch along the film on which the share of the line across changes evenly. Micrometres.
struct Slice {
    double along = 0;
    double across_from = 0;
    double across_to = 0;
};

/// The slices of disjoint polygons taken together, lines across being parallel to y.
std::vector<Slice> slices_of(const std::vector<Polygon>& polygons);

/// A region within that of all points at most `reach` from the polygon, nearly as large.
std::vector<Polygon> grown_within(const Polygon& polygon, double reach);

} // namespace pelt::nest::contour
