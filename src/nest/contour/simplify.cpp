// SPDX-License-Identifier: MIT
// Two steps, both of which only add to the region on the left of a ring: a hollow corner is cut off
// by its chord; a side between two outward corners is dropped and its neighbours are lengthened
// until they meet. The cheapest step first.
#include "nest/contour/simplify.hpp"

#include "nest/contour/vec.hpp"

#include <algorithm>
#include <limits>
#include <optional>

namespace pelt::nest::contour {
namespace {

// New corners are pushed this far out, so that rounding to the grid never bares the old outline.
constexpr double rounding_um = 1.5;

struct Step {
    std::size_t ring = 0;
    std::size_t at = 0; // corner that goes, or the first end of the side that goes
    bool side = false;
    GridPoint corner; // replaces the side
    double depth = std::numeric_limits<double>::infinity();
};

GridPoint point(const Ring& ring, std::size_t i) {
    return ring[i % ring.size()];
}

double turn_at(const Ring& ring, std::size_t i) {
    const Vec a = vec_of(point(ring, i + ring.size() - 1));
    const Vec b = vec_of(point(ring, i));
    const Vec c = vec_of(point(ring, i + 1));
    return cross(b - a, c - b);
}

double distance_to_line(Vec p, Vec a, Vec b) {
    const Vec d = b - a;
    const double length = norm(d);
    return length > 0 ? std::abs(cross(d, p - a)) / length : norm(p - a);
}

double chord_depth(const Ring& ring, std::size_t i) {
    return distance_to_line(vec_of(point(ring, i)), vec_of(point(ring, i + ring.size() - 1)),
                            vec_of(point(ring, i + 1)));
}

// Where the sides before and after side i meet, pushed out; none when they do not meet ahead.
std::optional<Vec> meeting(const Ring& ring, std::size_t i) {
    const Vec a = vec_of(point(ring, i + ring.size() - 1));
    const Vec b = vec_of(point(ring, i));
    const Vec c = vec_of(point(ring, i + 1));
    const Vec d = vec_of(point(ring, i + 2));
    const double before_length = norm(b - a);
    const double after_length = norm(d - c);
    if (before_length <= 0 || after_length <= 0)
        return std::nullopt;
    const Vec before = (1 / before_length) * (b - a);
    const Vec after = (1 / after_length) * (d - c);
    const double turn = cross(before, after);
    const double open = 1 + dot(before, after);
    if (turn <= 1e-9 || open < 0.1)
        return std::nullopt;
    const Vec corner = b + (cross(c - b, after) / turn) * before;
    const Vec outward{before.y + after.y, -before.x - after.x};
    return corner + (rounding_um / open) * outward;
}

// True when the segment crosses or touches a side of the polygon that does not end at its ends.
bool crosses(const Polygon& polygon, GridPoint from, GridPoint to,
             const std::vector<GridPoint>& spared) {
    const Vec a = vec_of(from);
    const Vec b = vec_of(to);
    const auto hits = [&](const Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const GridPoint p = ring[i];
            const GridPoint q = point(ring, i + 1);
            if (std::find(spared.begin(), spared.end(), p) != spared.end() ||
                std::find(spared.begin(), spared.end(), q) != spared.end())
                continue;
            if (std::min(p.x, q.x) > std::max(from.x, to.x) ||
                std::max(p.x, q.x) < std::min(from.x, to.x) ||
                std::min(p.y, q.y) > std::max(from.y, to.y) ||
                std::max(p.y, q.y) < std::min(from.y, to.y))
                continue;
            const Vec c = vec_of(p);
            const Vec d = vec_of(q);
            if (cross(b - a, c - a) * cross(b - a, d - a) <= 0 &&
                cross(d - c, a - c) * cross(d - c, b - c) <= 0)
                return true;
        }
        return false;
    };
    return hits(polygon.outer) || std::any_of(polygon.holes.begin(), polygon.holes.end(), hits);
}

// True when a corner elsewhere lies in the triangle, where a shortcut would swallow it.
bool covers_corner(const Polygon& polygon, Vec a, Vec b, Vec c,
                   const std::vector<GridPoint>& spared) {
    const double sense = cross(b - a, c - a);
    const auto inside = [&](GridPoint g) {
        if (std::find(spared.begin(), spared.end(), g) != spared.end())
            return false;
        const Vec p = vec_of(g);
        return cross(b - a, p - a) * sense >= 0 && cross(c - b, p - b) * sense >= 0 &&
               cross(a - c, p - c) * sense >= 0;
    };
    const auto any_inside = [&](const Ring& ring) {
        return std::any_of(ring.begin(), ring.end(), inside);
    };
    return any_inside(polygon.outer) ||
           std::any_of(polygon.holes.begin(), polygon.holes.end(), any_inside);
}

const Ring& ring_of(const Polygon& polygon, std::size_t index) {
    return index == 0 ? polygon.outer : polygon.holes[index - 1];
}

bool stays_simple(const Polygon& polygon, const Step& step) {
    const Ring& ring = ring_of(polygon, step.ring);
    const GridPoint a = point(ring, step.at + ring.size() - 1);
    const GridPoint b = point(ring, step.at);
    const GridPoint c = point(ring, step.at + 1);
    if (!step.side) {
        const std::vector<GridPoint> spared{a, b, c};
        return !covers_corner(polygon, vec_of(a), vec_of(b), vec_of(c), spared) &&
               !crosses(polygon, a, c, spared);
    }
    const GridPoint d = point(ring, step.at + 2);
    const std::vector<GridPoint> spared{a, b, c, d};
    return !covers_corner(polygon, vec_of(b), vec_of(step.corner), vec_of(c), spared) &&
           !crosses(polygon, a, step.corner, spared) && !crosses(polygon, step.corner, d, spared);
}

void consider(const Polygon& polygon, std::size_t index, double limit, std::vector<Step>& steps) {
    const Ring& ring = ring_of(polygon, index);
    if (ring.size() <= 4)
        return;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const double turn = turn_at(ring, i);
        if (turn <= 0) {
            const double depth = chord_depth(ring, i);
            if (depth <= limit)
                steps.push_back({index, i, false, {}, depth});
        } else if (turn_at(ring, i + 1) > 0) {
            const std::optional<Vec> corner = meeting(ring, i);
            if (!corner)
                continue;
            const double depth =
                distance_to_line(*corner, vec_of(ring[i]), vec_of(point(ring, i + 1)));
            if (depth <= limit)
                steps.push_back(
                    {index, i, true, {std::llround(corner->x), std::llround(corner->y)}, depth});
        }
    }
}

void apply(Polygon& polygon, const Step& step) {
    Ring& ring = step.ring == 0 ? polygon.outer : polygon.holes[step.ring - 1];
    if (step.side)
        ring[(step.at + 1) % ring.size()] = step.corner;
    ring.erase(ring.begin() + static_cast<std::ptrdiff_t>(step.at));
}

bool take_cheapest(Polygon& polygon, double limit) {
    std::vector<Step> steps;
    for (std::size_t index = 0; index <= polygon.holes.size(); ++index)
        consider(polygon, index, limit, steps);
    std::sort(steps.begin(), steps.end(), [](const Step& a, const Step& b) {
        if (a.depth != b.depth)
            return a.depth < b.depth;
        return std::pair(a.ring, a.at) < std::pair(b.ring, b.at);
    });
    for (const Step& step : steps)
        if (stays_simple(polygon, step)) {
            apply(polygon, step);
            return true;
        }
    return false;
}

std::size_t points_of(const Polygon& polygon) {
    std::size_t count = polygon.outer.size();
    for (const Ring& hole : polygon.holes)
        count += hole.size();
    return count;
}

} // namespace

Polygon simplified(const Polygon& polygon, double depth, std::size_t enough, double free_depth) {
    Polygon out = polygon;
    while (take_cheapest(out, points_of(out) > enough ? depth : free_depth)) {
    }
    return out;
}

} // namespace pelt::nest::contour
