// SPDX-License-Identifier: MIT
// Plane geometry on the grid: booleans, grown outlines. Points, rings, areas and transforms are
// plain types of model/polygon.hpp. Whatever is returned is simple (rings nowhere touch themselves
// or one another within a polygon), without needless points, and in one normal form.
#pragma once

#include "geometry/grow.hpp"
#include "model/polygon.hpp"

#include <vector>

namespace pelt::geometry {

/// The region where the curves together wind around at least once counter-clockwise.
std::vector<Polygon> positive_union(const std::vector<Ring>& curves);

/// The points of `a` or `b`, of both, of `a` but not `b`. Polygons obey the law of
/// model/polygon.hpp; those of one list may overlap.
std::vector<Polygon> unite(const std::vector<Polygon>& a, const std::vector<Polygon>& b);
std::vector<Polygon> intersect(const std::vector<Polygon>& a, const std::vector<Polygon>& b);
std::vector<Polygon> subtract(const std::vector<Polygon>& a, const std::vector<Polygon>& b);

/// The outline grown by the rule of grow.hpp: `ring` counter-clockwise and simple, in millimetres;
/// moves[i] >= 0, in millimetres, is that of the side from point i to the next.
std::vector<Polygon> grown(const TaggedRing& ring, const std::vector<double>& moves);
std::vector<Polygon> grown(const std::vector<Point>& ring, const std::vector<double>& moves);

/// What is left of an opening (`ring` clockwise) when film grows into it by the same rule; nothing
/// when it closes.
std::vector<Polygon> shrunk(const TaggedRing& ring, const std::vector<double>& moves);
std::vector<Polygon> shrunk(const std::vector<Point>& ring, const std::vector<double>& moves);

/// The polygon grown by one move, its holes made smaller by it.
std::vector<Polygon> grown(const Polygon& polygon, Um move);

/// Twice the area of a polygon, or of polygons that do not overlap; holes taken off.
DoubleArea doubled_area(const Polygon& polygon);
DoubleArea doubled_area(const std::vector<Polygon>& polygons);

/// The one of the largest area, of equal ones the first; there must be one.
Polygon largest(std::vector<Polygon> polygons);

/// The same figure in the form that every function here returns: tidy rings from their least
/// points on, holes in order. For figures that were turned or mirrored.
Polygon normalised(Polygon polygon);

/// The nearest point of the grid, halves away from zero.
GridPoint on_grid(Point p);
Ring on_grid(const std::vector<Point>& points);
Point in_mm(GridPoint p);
std::vector<Point> in_mm(const Ring& ring);

/// The convex hull, counter-clockwise, no collinear points. Coordinates below 2^30 in size.
Ring convex_hull(std::vector<GridPoint> points);

/// The turn below 360 degrees that brings the way from `from` to `to` nearest to +x. The points
/// differ.
Turn laying_along(GridPoint from, GridPoint to);

/// A way to lie, below 180 degrees, and the room across that it takes.
struct Narrowest {
    Turn turn;
    Um across = 0;
};

/// The turn in which a ring takes the least room across (y).
Narrowest narrowest(const Ring& ring);

/// The box as a counter-clockwise ring from its low corner.
Ring rectangle(const Box& box);

} // namespace pelt::geometry
