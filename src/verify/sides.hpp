// SPDX-License-Identifier: MIT
// The sides of a ring that are moved, and the corners between them, by the rule of "Wrapped
// outline". Millimetres, before the grid. Inside verify/ only.
#pragma once

#include "model/blank.hpp"

#include <vector>

namespace pelt::verify {

/// A side longer than nothing. Where it begins or ends a curve its way there is the curve's.
struct MovedSide {
    Point from;
    Point to;
    Point begins; ///< unit vectors
    Point ends;
    double move = 0;
    double stop = 0;
};

/// Sides by the ring's segments; moves and stops as the segments.
std::vector<MovedSide> moved_sides(const TaggedRing& ring, const std::vector<double>& moves,
                                   const std::vector<double>& stops = {});

/// What a corner joins: ways and moves of the sides before and after it.
struct Corner {
    Point at;
    Point comes;
    double move_before = 0;
    Point goes;
    double move_after = 0;

    bool is_outward() const;
    /// The interior angle is more than a right one, and less than two.
    bool is_obtuse() const;
};
Corner corner_between(const MovedSide& before, const MovedSide& after);

/// The points that take the corner's place. At an outward corner the moved sides are lengthened to
/// their crossing, cut square at twice the larger move, or joined by a step; at an inward corner
/// the curve runs through the corner itself. Wound around more often than not at all: inside.
std::vector<Point> corner_points(const Corner& corner);

inline Point right_of(Point way) {
    return {way.y, -way.x};
}
inline Point shifted(Point p, Point way, double by) {
    return {p.x + by * way.x, p.y + by * way.y};
}
inline Point reversed(Point way) {
    return {-way.x, -way.y};
}
inline double dot(Point a, Point b) {
    return a.x * b.x + a.y * b.y;
}
inline double cross(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}

} // namespace pelt::verify
