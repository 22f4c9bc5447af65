// SPDX-License-Identifier: MIT
// Plane figures. One law for all: rings are closed implicitly (the last point joins the first),
// outer rings run counter-clockwise, holes clockwise, x right and y up.
#pragma once

#include "model/length.hpp"

#include <vector>

namespace pelt {

/// A point before the grid, in millimetres.
struct Point {
    double x = 0;
    double y = 0;
    friend bool operator==(const Point&, const Point&) = default;
};

/// A point on the grid, in micrometres.
struct GridPoint {
    Um x = 0;
    Um y = 0;
    friend auto operator<=>(const GridPoint&, const GridPoint&) = default;
};

using Ring = std::vector<GridPoint>;

/// An outer ring less its holes.
struct Polygon {
    Ring outer;
    std::vector<Ring> holes;
    friend bool operator==(const Polygon&, const Polygon&) = default;
};

/// An upright box on the grid, low corner included.
struct Box {
    GridPoint low;
    GridPoint high;
    Um along() const { return high.x - low.x; }
    Um across() const { return high.y - low.y; }
};

/// The smallest upright box around a ring of at least one point.
Box box_of(const Ring& ring);

/// A turn about the origin, in millidegrees, 0 <= turn < 360000, counter-clockwise.
struct Turn {
    int millidegrees = 0;
    friend auto operator<=>(const Turn&, const Turn&) = default;
};
inline constexpr Turn no_turn{0};
inline constexpr Turn quarter_turn{90'000};
inline constexpr Turn half_turn{180'000};
inline constexpr Turn three_quarter_turn{270'000};

/// The ring turned about the origin, then moved by `by`. Quarter turns are exact; others round
/// each coordinate to the nearest micrometre.
Ring placed(const Ring& ring, Turn turn, GridPoint by);
Polygon placed(const Polygon& polygon, Turn turn, GridPoint by);

/// Whether a point lies inside the polygon; of its rim either way.
bool holds(const Polygon& polygon, GridPoint p);

/// Twice the signed area: positive counter-clockwise.
DoubleArea doubled_area(const Ring& ring);

} // namespace pelt
