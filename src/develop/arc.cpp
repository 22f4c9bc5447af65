// SPDX-License-Identifier: MIT
#include "develop/arc.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pelt::develop {
namespace {

constexpr double pi = std::numbers::pi;

/// Where an arc is so flat that it counts as straight, mm.
constexpr double straight_mm = 1e-6;

Point at(const Arc& arc, double angle) {
    return {arc.centre.x + arc.radius * std::cos(angle),
            arc.centre.y + arc.radius * std::sin(angle)};
}

/// The angle turned from the arc's start, in its own sense, 0 <= … < 2 pi.
double from_start(const Arc& arc, double angle) {
    const double turned = arc.sweep > 0 ? angle - arc.start : arc.start - angle;
    return turned - 2 * pi * std::floor(turned / (2 * pi));
}

} // namespace

std::optional<Arc> arc_through(Point a, Point m, Point b) {
    // Relative to a, so that a far origin costs no digits.
    const Point u{m.x - a.x, m.y - a.y};
    const Point w{b.x - a.x, b.y - a.y};
    const double twice_area = u.x * w.y - u.y * w.x;
    const double longest = std::max(std::hypot(u.x, u.y), std::hypot(w.x, w.y));
    if (std::abs(twice_area) <= straight_mm * longest)
        return std::nullopt;
    const double uu = u.x * u.x + u.y * u.y;
    const double ww = w.x * w.x + w.y * w.y;
    const Point c{(w.y * uu - u.y * ww) / (2 * twice_area),
                  (u.x * ww - w.x * uu) / (2 * twice_area)};
    Arc arc{{a.x + c.x, a.y + c.y}, std::hypot(c.x, c.y), std::atan2(-c.y, -c.x), 0};
    arc.sweep = twice_area > 0 ? 1 : -1;
    arc.sweep *= from_start(arc, std::atan2(w.y - c.y, w.x - c.x));
    return arc;
}

std::vector<Point> flattened(const Arc& arc, Point to, Point scale) {
    const double radius = arc.radius * std::max(scale.x, scale.y);
    // A chord over the angle s lies r (1 - cos(s/2)) below its arc.
    const double step = std::min(pi / 2, 2 * std::acos(std::max(0.0, 1 - flattening_mm / radius)));
    const auto chords = static_cast<int>(std::ceil(std::abs(arc.sweep) / step));
    std::vector<Point> points;
    for (int k = 1; k < chords; ++k) {
        const Point p = at(arc, arc.start + arc.sweep * k / chords);
        points.push_back({p.x * scale.x, p.y * scale.y});
    }
    points.push_back({to.x * scale.x, to.y * scale.y});
    return points;
}

EndWays end_ways(const Arc& arc, Point scale) {
    const auto way = [&](double angle) {
        const double sense = arc.sweep > 0 ? 1 : -1;
        const Point along{-sense * std::sin(angle) * scale.x, sense * std::cos(angle) * scale.y};
        const double length = std::hypot(along.x, along.y);
        return Point{along.x / length, along.y / length};
    };
    return {way(arc.start), way(arc.start + arc.sweep)};
}

std::vector<Point> turning_points(const Arc& arc) {
    std::vector<Point> points;
    const Point c = arc.centre;
    const double r = arc.radius;
    const Point extremes[] = {{c.x + r, c.y}, {c.x, c.y + r}, {c.x - r, c.y}, {c.x, c.y - r}};
    for (int quarter = 0; quarter < 4; ++quarter)
        if (from_start(arc, quarter * pi / 2) < std::abs(arc.sweep))
            points.push_back(extremes[quarter]);
    return points;
}

} // namespace pelt::develop
