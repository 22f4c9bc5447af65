// SPDX-License-Identifier: MIT
// The parts of a panel between its seams. Piece frame. Inside piece/ only.
#pragma once

#include "piece/divide.hpp"
#include "piece/shapes.hpp"

#include <vector>

namespace pelt::piece {

/// A part of a panel between seams. The cores of all cells are the panel's outline, without laps;
/// the film has laps, tucks and stops.
struct Cell {
    std::vector<Polygon> core;
    std::vector<Polygon> wrapped;
    std::vector<Polygon> sheet;
    std::vector<Ring> seam_ends;
};

/// The cell's upper and under part; nothing where the line leaves less than a thousandth of the
/// panel on one side.
std::vector<Cell> divided(const Cell& cell, const DividedPlane& plane, DoubleArea panel);

/// The pieces of film of a cell: one, or more where the line cut off several tongues. Slivers that
/// come from rounding are dropped.
std::vector<Part> parts_of(const Cell& cell);

/// Whether the point lies in one of the figures.
bool inside(Point p, const std::vector<Polygon>& figures);

/// Adds where, as a share of the way from a to b, the sides of the figures cross it.
void add_crossings(Point a, Point b, const std::vector<Polygon>& figures,
                   std::vector<double>& shares);

/// How long the line runs between two cores, millimetres, and whether the first one is the upper.
struct Between {
    double length_mm = 0;
    bool first_is_upper = true;
};
Between between(const std::vector<Polygon>& first, const std::vector<Polygon>& second,
                const DividedPlane& plane);

} // namespace pelt::piece
