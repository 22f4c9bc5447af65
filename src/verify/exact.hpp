// SPDX-License-Identifier: MIT
// Exact predicates on grid points. Coordinates stay within 2^41 micrometres and figures that are
// compared within 2^28 of one another (`sane` sees to both), so cross products stay under 2^84, and
// their squares, of near points only, under 2^118: nothing overflows 128 bits. Inside verify/ only.
#pragma once

#include "model/polygon.hpp"

namespace pelt::verify {

inline GridPoint operator-(GridPoint a, GridPoint b) {
    return {a.x - b.x, a.y - b.y};
}
inline GridPoint operator+(GridPoint a, GridPoint b) {
    return {a.x + b.x, a.y + b.y};
}
inline GridPoint doubled(GridPoint p) {
    return {2 * p.x, 2 * p.y};
}
inline Int128 cross(GridPoint a, GridPoint b) {
    return static_cast<Int128>(a.x) * b.y - static_cast<Int128>(a.y) * b.x;
}
inline Int128 dot(GridPoint a, GridPoint b) {
    return static_cast<Int128>(a.x) * b.x + static_cast<Int128>(a.y) * b.y;
}

/// On which side of the line from a to b the point lies: 1 left, -1 right, 0 on it.
int side(GridPoint a, GridPoint b, GridPoint p);

bool on_segment(GridPoint a, GridPoint b, GridPoint p);

/// One point inside both segments, neither of them ending there.
bool cross_inside(GridPoint a, GridPoint b, GridPoint c, GridPoint d);

/// The segments have a point in common.
bool share_a_point(GridPoint a, GridPoint b, GridPoint c, GridPoint d);

/// No point of one lies nearer than `gap` to the other; figures that touch are not apart.
bool point_apart(GridPoint p, GridPoint a, GridPoint b, Um gap);
bool segments_apart(GridPoint a, GridPoint b, GridPoint c, GridPoint d, Um gap);

/// The ring turned by whole quarters exactly; other turns are rounded to the grid.
Ring lying(const Ring& ring, Turn turn, GridPoint by);
Polygon lying(const Polygon& polygon, Turn turn, GridPoint by);

/// Twice the signed area.
Int128 twice_area(const Ring& ring);
Int128 twice_area(const Polygon& polygon);

/// The smallest upright box; empty rings have none.
Box box_around(const Ring& ring);
Box grown(const Box& box, Um by);
/// Closed boxes with a common point.
inline bool meet(const Box& a, const Box& b) {
    return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y;
}

} // namespace pelt::verify
