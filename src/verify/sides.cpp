// SPDX-License-Identifier: MIT
#include "verify/sides.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace pelt::verify {
namespace {

/// Ways that turn by less go straight on.
constexpr double rounding = 1e-9;

/// The square cut of a far crossing: the moved sides end on the line across the bisector.
std::vector<Point> squared(const Corner& c, double far) {
    Point middle{c.comes.y + c.goes.y, -c.comes.x - c.goes.x};
    const Point back{c.comes.x - c.goes.x, c.comes.y - c.goes.y};
    if (dot(back, back) > dot(middle, middle))
        middle = back;
    const double size = std::hypot(middle.x, middle.y);
    const Point bisector{middle.x / size, middle.y / size};
    std::vector<Point> out{shifted(c.at, right_of(c.comes), c.move_before)};
    for (const auto& [way, move] :
         std::array{std::pair(c.comes, c.move_before), std::pair(c.goes, c.move_after)}) {
        const Point foot = shifted(c.at, right_of(way), move);
        const double missing = far - move * dot(right_of(way), bisector);
        out.push_back(shifted(foot, way, missing / dot(way, bisector)));
    }
    out.push_back(shifted(c.at, right_of(c.goes), c.move_after));
    return out;
}

std::vector<Point> outward_points(const Corner& c, Point p, Point q) {
    const double sine = cross(c.comes, c.goes);
    const double cosine = dot(c.comes, c.goes);
    const double before = c.move_before;
    const double after = c.move_after;
    if (before < after * cosine || after < before * cosine)
        return {p, q};
    const double half_tangent = sine / (1 + cosine);
    const double beyond =
        before == after ? before * half_tangent : (after - before * cosine) / sine;
    const Point crossing = shifted(p, c.comes, beyond);
    const double far = 2 * std::max(before, after);
    const Point out{crossing.x - c.at.x, crossing.y - c.at.y};
    // Not a number where the side turns right back.
    if (dot(out, out) <= far * far)
        return {p, crossing, q};
    return squared(c, far);
}

} // namespace

std::vector<MovedSide> moved_sides(const TaggedRing& ring, const std::vector<double>& moves,
                                   const std::vector<double>& stops) {
    std::vector<MovedSide> sides;
    for (std::size_t i = 0; i < ring.points.size(); ++i) {
        const Point a = ring.points[i];
        const Point b = ring.points[i + 1 == ring.points.size() ? 0 : i + 1];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        if (!(length > 0))
            continue;
        const Point way{(b.x - a.x) / length, (b.y - a.y) / length};
        MovedSide side{a, b, way, way, moves[i], stops.empty() ? 0 : stops[i]};
        if (!ring.ways.empty() && !(ring.ways[i].begins == Point{}))
            side.begins = ring.ways[i].begins;
        if (!ring.ways.empty() && !(ring.ways[i].ends == Point{}))
            side.ends = ring.ways[i].ends;
        sides.push_back(side);
    }
    return sides;
}

bool Corner::is_outward() const {
    const double sine = cross(comes, goes);
    return sine > rounding || (sine >= -rounding && dot(comes, goes) < 0);
}

bool Corner::is_obtuse() const {
    return is_outward() && dot(comes, goes) > 0;
}

Corner corner_between(const MovedSide& before, const MovedSide& after) {
    return {after.from, before.ends, before.move, after.begins, after.move};
}

std::vector<Point> corner_points(const Corner& c) {
    if (c.move_before == 0 && c.move_after == 0)
        return {c.at};
    const Point p = shifted(c.at, right_of(c.comes), c.move_before);
    const Point q = shifted(c.at, right_of(c.goes), c.move_after);
    if (c.is_outward())
        return outward_points(c, p, q);
    if (cross(c.comes, c.goes) >= -rounding)
        return {p, q};
    return {p, c.at, q};
}

} // namespace pelt::verify
