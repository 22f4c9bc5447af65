// SPDX-License-Identifier: MIT
// Holes are joined to the outer ring by bridges, the ring is cut into ears, and ears are merged
// over their longest common sides while they stay convex (Hertel and Mehlhorn 1983, "Fast
// triangulation of simple polygons", from memory: at most four times the least number of parts).
#include "nest/contour/convex_parts.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

namespace pelt::nest::contour {
namespace {

// Twice the signed area of a triangle; exact in 64 bits below 2^30.
Um turn_of(GridPoint a, GridPoint b, GridPoint c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool between(GridPoint a, GridPoint b, GridPoint p) {
    return std::min(a.x, b.x) <= p.x && p.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= p.y &&
           p.y <= std::max(a.y, b.y);
}

int sign(Um value) {
    return (value > 0) - (value < 0);
}

// True when the segments have a point in common other than a shared end.
bool blocks(GridPoint a, GridPoint b, GridPoint c, GridPoint d) {
    const int c_side = sign(turn_of(a, b, c));
    const int d_side = sign(turn_of(a, b, d));
    const int a_side = sign(turn_of(c, d, a));
    const int b_side = sign(turn_of(c, d, b));
    if (c_side * d_side < 0 && a_side * b_side < 0)
        return true;
    const auto lies_on = [](int side, GridPoint p, GridPoint from, GridPoint to) {
        return side == 0 && between(from, to, p) && p != from && p != to;
    };
    return lies_on(c_side, c, a, b) || lies_on(d_side, d, a, b) || lies_on(a_side, a, c, d) ||
           lies_on(b_side, b, c, d);
}

bool any_blocks(GridPoint a, GridPoint b, const Ring& ring) {
    for (std::size_t i = 0; i < ring.size(); ++i)
        if (blocks(a, b, ring[i], ring[(i + 1) % ring.size()]))
            return true;
    return false;
}

// Whether a step from ring[i] towards p goes into the region on the left of the ring.
bool opens_towards(const Ring& ring, std::size_t i, GridPoint p) {
    const GridPoint before = ring[(i + ring.size() - 1) % ring.size()];
    const GridPoint at = ring[i];
    const GridPoint after = ring[(i + 1) % ring.size()];
    if (turn_of(before, at, after) > 0)
        return turn_of(before, at, p) > 0 && turn_of(at, after, p) > 0;
    return turn_of(before, at, p) > 0 || turn_of(at, after, p) > 0;
}

// Joins one hole to the ring by the shortest free bridge from the hole's rightmost point.
bool join_hole(Ring& ring, const Ring& hole, const std::vector<Ring>& others) {
    const auto start =
        static_cast<std::size_t>(std::max_element(hole.begin(), hole.end()) - hole.begin());
    const GridPoint from = hole[start];
    std::vector<std::pair<Int128, std::size_t>> by_distance;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Int128 dx = ring[i].x - from.x;
        const Int128 dy = ring[i].y - from.y;
        by_distance.emplace_back(dx * dx + dy * dy, i);
    }
    std::sort(by_distance.begin(), by_distance.end());
    for (const auto& [distance, i] : by_distance) {
        const GridPoint to = ring[i];
        if (to == from || !opens_towards(ring, i, from) || !opens_towards(hole, start, to) ||
            any_blocks(from, to, ring) || any_blocks(from, to, hole))
            continue;
        if (std::any_of(others.begin(), others.end(),
                        [&](const Ring& other) { return any_blocks(from, to, other); }))
            continue;
        Ring bridge{to};
        for (std::size_t k = 0; k <= hole.size(); ++k)
            bridge.push_back(hole[(start + k) % hole.size()]);
        ring.insert(ring.begin() + static_cast<std::ptrdiff_t>(i), bridge.begin(), bridge.end());
        return true;
    }
    return false;
}

std::optional<Ring> keyhole_ring(const Polygon& polygon) {
    Ring ring = polygon.outer;
    std::vector<Ring> holes = polygon.holes;
    std::sort(holes.begin(), holes.end(), [](const Ring& a, const Ring& b) {
        return *std::max_element(a.begin(), a.end()) > *std::max_element(b.begin(), b.end());
    });
    while (!holes.empty()) {
        const Ring hole = holes.front();
        holes.erase(holes.begin());
        if (!join_hole(ring, hole, holes))
            return std::nullopt;
    }
    return ring;
}

bool is_ear(const Ring& ring, std::size_t i) {
    const std::size_t n = ring.size();
    const GridPoint a = ring[(i + n - 1) % n];
    const GridPoint b = ring[i];
    const GridPoint c = ring[(i + 1) % n];
    if (turn_of(a, b, c) <= 0)
        return false;
    return std::none_of(ring.begin(), ring.end(), [&](GridPoint p) {
        return p != a && p != b && p != c && turn_of(a, b, p) >= 0 && turn_of(b, c, p) >= 0 &&
               turn_of(c, a, p) >= 0;
    });
}

// The roundest ear first, so that the parts are not slivers: largest twice-area over longest side.
std::optional<std::size_t> best_ear(const Ring& ring) {
    std::optional<std::size_t> best;
    double best_score = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        if (!is_ear(ring, i))
            continue;
        const GridPoint a = ring[(i + ring.size() - 1) % ring.size()];
        const GridPoint c = ring[(i + 1) % ring.size()];
        const auto dx = static_cast<double>(c.x - a.x);
        const auto dy = static_cast<double>(c.y - a.y);
        const double score =
            static_cast<double>(turn_of(a, ring[i], c)) / (dx * dx + dy * dy + 1.0);
        if (!best || score > best_score) {
            best = i;
            best_score = score;
        }
    }
    return best;
}

std::optional<std::vector<Ring>> ears(Ring ring) {
    std::vector<Ring> out;
    while (ring.size() > 2) {
        const std::size_t n = ring.size();
        std::size_t flat = n;
        for (std::size_t i = 0; i < n && flat == n; ++i)
            if (turn_of(ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]) == 0)
                flat = i;
        std::size_t drop = flat;
        if (flat == n) {
            const std::optional<std::size_t> ear = best_ear(ring);
            if (!ear)
                return std::nullopt;
            drop = *ear;
            out.push_back({ring[(drop + n - 1) % n], ring[drop], ring[(drop + 1) % n]});
        }
        ring.erase(ring.begin() + static_cast<std::ptrdiff_t>(drop));
    }
    return out;
}

bool is_convex(const Ring& ring) {
    for (std::size_t i = 0; i < ring.size(); ++i)
        if (turn_of(ring[i], ring[(i + 1) % ring.size()], ring[(i + 2) % ring.size()]) < 0)
            return false;
    return true;
}

// Position of the side from `a` to `b`, or the ring's size.
std::size_t find_side(const Ring& ring, GridPoint a, GridPoint b) {
    for (std::size_t i = 0; i < ring.size(); ++i)
        if (ring[i] == a && ring[(i + 1) % ring.size()] == b)
            return i;
    return ring.size();
}

// The union of two rings over their common side a-b (one runs a to b, the other b to a).
Ring joined(const Ring& one, std::size_t one_side, const Ring& two, std::size_t two_side) {
    Ring out;
    for (std::size_t k = 1; k < one.size() + 1; ++k)
        out.push_back(one[(one_side + k) % one.size()]);
    for (std::size_t k = 2; k < two.size(); ++k)
        out.push_back(two[(two_side + k) % two.size()]);
    return out;
}

struct Side {
    Int128 length2 = 0;
    GridPoint a;
    GridPoint b;
    friend bool operator<(const Side& left, const Side& right) {
        if (left.length2 != right.length2)
            return left.length2 > right.length2;
        return std::pair(left.a, left.b) < std::pair(right.a, right.b);
    }
};

void merge_over(std::vector<Ring>& parts, GridPoint a, GridPoint b) {
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::size_t one_side = find_side(parts[i], a, b);
        if (one_side == parts[i].size())
            continue;
        for (std::size_t j = 0; j < parts.size(); ++j) {
            if (i == j)
                continue;
            const std::size_t two_side = find_side(parts[j], b, a);
            if (two_side == parts[j].size())
                continue;
            Ring both = joined(parts[i], one_side, parts[j], two_side);
            if (!is_convex(both))
                continue;
            parts[i] = std::move(both);
            parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(j));
            return;
        }
    }
}

std::vector<Ring> merged(std::vector<Ring> parts) {
    std::vector<Side> sides;
    for (const Ring& part : parts)
        for (std::size_t i = 0; i < part.size(); ++i) {
            const GridPoint a = part[i];
            const GridPoint b = part[(i + 1) % part.size()];
            const Int128 dx = a.x - b.x;
            const Int128 dy = a.y - b.y;
            if (a < b)
                sides.push_back({dx * dx + dy * dy, a, b});
        }
    std::sort(sides.begin(), sides.end());
    for (const Side& side : sides)
        merge_over(parts, side.a, side.b);
    return parts;
}

DoubleArea area_of(const std::vector<Ring>& rings) {
    DoubleArea sum = 0;
    for (const Ring& ring : rings)
        sum += doubled_area(ring);
    return sum;
}

} // namespace

std::vector<Ring> convex_parts(const Polygon& polygon) {
    DoubleArea whole = doubled_area(polygon.outer);
    whole += area_of(polygon.holes);
    if (const std::optional<Ring> ring = keyhole_ring(polygon))
        if (std::optional<std::vector<Ring>> cut = ears(*ring); cut && area_of(*cut) == whole) {
            std::vector<Ring> parts = merged(std::move(*cut));
            for (Ring& part : parts)
                part = geometry::convex_hull(part);
            return parts;
        }
    return {geometry::convex_hull(polygon.outer)};
}

Body body_of(const Polygon& polygon) {
    Body body{convex_parts(polygon), {}};
    if (body.parts.size() == 1) {
        body.rings = body.parts;
        return body;
    }
    body.rings = polygon.holes;
    body.rings.push_back(polygon.outer);
    return body;
}

} // namespace pelt::nest::contour
