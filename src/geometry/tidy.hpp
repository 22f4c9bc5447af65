// SPDX-License-Identifier: MIT
// One form for every figure, so that equal figures have equal points. Inside geometry/ only.
#pragma once

#include "model/polygon.hpp"

#include <vector>

namespace pelt::geometry {

/// Sides this short come from rounding, never from a panel. Growing a figure would magnify them,
/// for their direction says nothing.
inline constexpr Um crumb = 2;

/// The ring without repeated points, points on the line between their neighbours, spikes and
/// crumbs, beginning at its least point (x, then y). Empty when nothing of it is left.
Ring tidy(const Ring& ring);

/// Tidy polygons, those that vanish dropped, by their first points; holes likewise.
std::vector<Polygon> tidy(std::vector<Polygon> polygons);

} // namespace pelt::geometry
