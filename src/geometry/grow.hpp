// SPDX-License-Identifier: MIT
// Growing an outline by a move of its own for every side. libpolyclipping offers one distance for
// all sides, so the curve is built here and its winding sorted out by a union.
//
// The rule at the vertex v between the sides a and b; p and q are v moved out along their normals:
//   outward corner   where the moved lines cross beyond p along a and before q along b: that
//                    crossing; cut square to the bisector at twice the larger move from v where
//                    it lies farther. Otherwise p, then q: a step.
//   inward corner    p, v, q; the loops that arise wind the other way and vanish in the union.
// Where a side begins or ends a curve, its way at that corner is the curve's.
#pragma once

#include "model/blank.hpp"

#include <vector>

namespace pelt::geometry {

/// A side at a corner: the way it runs, a unit vector, and its move in millimetres.
struct MovedSide {
    Point way;
    double move = 0;
};

/// The points that take the place of `v`, in order.
std::vector<Point> grown_corner(Point v, const MovedSide& a, const MovedSide& b);

/// A side of a ring that is longer than nothing; its ways, unit vectors, at its two ends.
struct RingSide {
    std::size_t index = 0; ///< of its first point
    Point from;
    Point to;
    Point begins;
    Point ends;
    bool bent = false; ///< one of them is a curve's, not the side's own
};

/// The sides in order, repeated points passed over.
std::vector<RingSide> sides_of(const TaggedRing& ring);

/// The whole curve of a ring of either orientation; outward is to the right of the way it runs.
std::vector<Point> grown_curve(const TaggedRing& ring, const std::vector<double>& moves);

} // namespace pelt::geometry
