// SPDX-License-Identifier: MIT
#include "geometry/grow.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::geometry {
namespace {

/// A turn this small is rounding: the ways of two curves that go on in one another.
constexpr double straight_on = 1e-9;

double dot(Point a, Point b) {
    return a.x * b.x + a.y * b.y;
}

double cross(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}

Point along(Point from, Point way, double distance) {
    return {from.x + distance * way.x, from.y + distance * way.y};
}

Point outward(Point way) {
    return {way.y, -way.x};
}

/// Where the line of a moved side crosses the line square to the unit vector `bisector` at `far`
/// from v.
Point cut_at(Point v, const MovedSide& side, Point bisector, double far) {
    const Point foot = along(v, outward(side.way), side.move);
    const double short_by = far - side.move * dot(outward(side.way), bisector);
    return along(foot, side.way, short_by / dot(side.way, bisector));
}

/// The bisector of an outward corner, pointing out: half the sum of the normals, or, where the
/// side nearly turns back and that sum vanishes, of the ways.
Point bisector_of(const MovedSide& a, const MovedSide& b) {
    const Point na = outward(a.way);
    const Point nb = outward(b.way);
    Point sum{na.x + nb.x, na.y + nb.y};
    const Point difference{a.way.x - b.way.x, a.way.y - b.way.y};
    if (dot(difference, difference) > dot(sum, sum))
        sum = difference;
    const double length = std::hypot(sum.x, sum.y);
    return {sum.x / length, sum.y / length};
}

/// The crossing, and v itself where one side stays: it lies on that side's line, and on the grid
/// the figure holds it exactly only if it is a point of it.
std::vector<Point> with_still_corner(Point p, Point crossing, Point q, const MovedSide& a,
                                     const MovedSide& b) {
    if (a.move == 0)
        return {p, crossing};
    if (b.move == 0)
        return {crossing, q};
    return {crossing};
}

std::vector<Point> outward_corner(Point v, const MovedSide& a, const MovedSide& b) {
    const double sine = cross(a.way, b.way);
    const double cosine = dot(a.way, b.way);
    const Point p = along(v, outward(a.way), a.move);
    const Point q = along(v, outward(b.way), b.move);
    if (a.move < b.move * cosine || b.move < a.move * cosine)
        return {p, q};
    // Equal moves need no difference of nearly equal numbers.
    const double beyond =
        a.move == b.move ? a.move * sine / (1 + cosine) : (b.move - a.move * cosine) / sine;
    const Point crossing = along(p, a.way, beyond);
    const Point bisector = bisector_of(a, b);
    const double far = 2 * std::max(a.move, b.move);
    // A side that turns right back has no crossing: then the distance is not a number.
    if (dot({crossing.x - v.x, crossing.y - v.y}, bisector) <= far)
        return with_still_corner(p, crossing, q, a, b);
    return {cut_at(v, a, bisector, far), cut_at(v, b, bisector, far)};
}

} // namespace

std::vector<Point> grown_corner(Point v, const MovedSide& a, const MovedSide& b) {
    if (a.move == 0 && b.move == 0)
        return {v};
    const double sine = cross(a.way, b.way);
    const bool straight = std::abs(sine) <= straight_on;
    const bool back = straight && dot(a.way, b.way) < 0;
    if ((sine > 0 && !straight) || back)
        return outward_corner(v, a, b);
    const Point p = along(v, outward(a.way), a.move);
    const Point q = along(v, outward(b.way), b.move);
    if (straight)
        return {p, q};
    return {p, v, q};
}

std::vector<RingSide> sides_of(const TaggedRing& ring) {
    std::vector<RingSide> sides;
    const std::size_t n = ring.points.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point a = ring.points[i];
        const Point b = ring.points[(i + 1) % n];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        if (length == 0)
            continue;
        const Point way{(b.x - a.x) / length, (b.y - a.y) / length};
        const EndWays curve = ring.ways.empty() ? EndWays{} : ring.ways[i];
        const bool begins = !(curve.begins == Point{});
        const bool ends = !(curve.ends == Point{});
        sides.push_back(
            {i, a, b, begins ? curve.begins : way, ends ? curve.ends : way, begins || ends});
    }
    return sides;
}

std::vector<Point> grown_curve(const TaggedRing& ring, const std::vector<double>& moves) {
    const std::vector<RingSide> sides = sides_of(ring);
    std::vector<Point> curve;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const RingSide& before = sides[(i + sides.size() - 1) % sides.size()];
        const RingSide& after = sides[i];
        const MovedSide a{before.ends, moves[before.index]};
        const MovedSide b{after.begins, moves[after.index]};
        // A straight side runs on to its corners; what is bent lies square to both ends first.
        if (before.bent)
            curve.push_back(along(after.from, outward(a.way), a.move));
        const std::vector<Point> corner = grown_corner(after.from, a, b);
        curve.insert(curve.end(), corner.begin(), corner.end());
        if (after.bent)
            curve.push_back(along(after.from, outward(b.way), b.move));
    }
    return curve;
}

} // namespace pelt::geometry
