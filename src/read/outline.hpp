// SPDX-License-Identifier: MIT
// Outlines as they are written: points, arcs, named edges. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/context.hpp"
#include "read/keys.hpp"
#include "read/yaml.hpp"

#include <cstddef>
#include <optional>
#include <string>

namespace pelt::read {

/// An outline of at least three corners, or two where an edge is an arc; no two neighbours are the
/// same on the grid. That it is simple is checked by check_shapes.
std::optional<OutlineForm> read_outline(const Entry& entry, const Key& key, Context& context);

/// The rectangle of a `size`: corner 1 at (0, 0), counter-clockwise.
OutlineForm rectangle_form(Point size, const Place& place);

/// "2-3": the edge that a segment of a form with so many corners is.
std::string edge_number(std::size_t segment, std::size_t corners);

/// A point rounded to the grid.
GridPoint on_grid(Point p);

} // namespace pelt::read
