// SPDX-License-Identifier: MIT
// Circular arcs through three points. Millimetres and radians. Inside develop/ only.
#pragma once

#include "model/blank.hpp"

#include <optional>
#include <vector>

namespace pelt::develop {

/// How far a flattened curve may lie from the true one, mm.
inline constexpr double flattening_mm = 0.05;

struct Arc {
    Point centre;
    double radius = 0;
    double start = 0; ///< angle of the first point
    double sweep = 0; ///< positive counter-clockwise, at most a full turn either way
};

/// The arc from a through m to b; none where the three lie on one line, to a millionth of a
/// millimetre.
std::optional<Arc> arc_through(Point a, Point m, Point b);

/// The points after the first one, `to` being the last, each coordinate multiplied by `scale`,
/// so that no chord is farther than flattening_mm from the scaled arc.
std::vector<Point> flattened(const Arc& arc, Point to, Point scale);

/// The ways, unit vectors, in which the scaled arc begins and ends.
EndWays end_ways(const Arc& arc, Point scale);

/// The points of the arc, its ends excepted, where it runs along x or along y.
std::vector<Point> turning_points(const Arc& arc);

} // namespace pelt::develop
