// SPDX-License-Identifier: MIT
#include "verify/exact.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pelt::verify {
namespace {

GridPoint less(GridPoint a, GridPoint b) {
    return {a.x - b.x, a.y - b.y};
}
Int128 cross(GridPoint a, GridPoint b) {
    return static_cast<Int128>(a.x) * b.y - static_cast<Int128>(a.y) * b.x;
}
Int128 dot(GridPoint a, GridPoint b) {
    return static_cast<Int128>(a.x) * b.x + static_cast<Int128>(a.y) * b.y;
}
int sign(Int128 value) {
    return value > 0 ? 1 : value < 0 ? -1 : 0;
}
/// On which side of the line from a to b the point lies: 1 left, -1 right, 0 on it.
int side(GridPoint a, GridPoint b, GridPoint p) {
    return sign(cross(less(b, a), less(p, a)));
}
bool on_segment(GridPoint a, GridPoint b, GridPoint p) {
    return side(a, b, p) == 0 && dot(less(p, a), less(p, b)) <= 0;
}
bool cross_inside(GridPoint a, GridPoint b, GridPoint c, GridPoint d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}
bool meet(GridPoint a, GridPoint b, GridPoint c, GridPoint d) {
    return cross_inside(a, b, c, d) || on_segment(a, b, c) || on_segment(a, b, d) ||
           on_segment(c, d, a) || on_segment(c, d, b);
}

bool point_apart(GridPoint p, GridPoint a, GridPoint b, Um gap) {
    const GridPoint ab = less(b, a);
    const GridPoint ap = less(p, a);
    const Int128 square = static_cast<Int128>(gap) * gap;
    const Int128 length = dot(ab, ab);
    const Int128 along = dot(ap, ab);
    if (along <= 0)
        return dot(ap, ap) >= square;
    if (along >= length)
        return dot(less(p, b), less(p, b)) >= square;
    const Int128 height = cross(ab, ap);
    return height * height >= square * length;
}

GridPoint next(const Ring& ring, std::size_t i) {
    return ring[i + 1 == ring.size() ? 0 : i + 1];
}

bool boxes_within(const Box& a, const Box& b, Um gap) {
    return a.low.x - gap < b.high.x && b.low.x - gap < a.high.x && a.low.y - gap < b.high.y &&
           b.low.y - gap < a.high.y;
}

Box edge_box(GridPoint a, GridPoint b) {
    return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

GridPoint twice(GridPoint p) {
    return {2 * p.x, 2 * p.y};
}
Polygon twice(const Polygon& polygon) {
    Polygon out;
    for (const GridPoint& p : polygon.outer)
        out.outer.push_back(twice(p));
    for (const Ring& hole : polygon.holes) {
        Ring& made = out.holes.emplace_back();
        for (const GridPoint& p : hole)
            made.push_back(twice(p));
    }
    return out;
}

/// The corners of `other` that lie on the edge, from a to b, both ends included.
Ring divided(GridPoint a, GridPoint b, const Polygon& other) {
    Ring stops{a, b};
    for (const Ring* ring : rings_of(other))
        for (const GridPoint& p : *ring)
            if (p != a && p != b && on_segment(a, b, p))
                stops.push_back(p);
    std::sort(stops.begin(), stops.end(), [&](GridPoint p, GridPoint q) {
        return dot(less(p, a), less(b, a)) < dot(less(q, a), less(b, a));
    });
    return stops;
}

bool runs_along_rim(GridPoint from, GridPoint to, const Polygon& other) {
    for (const Ring* ring : rings_of(other))
        for (std::size_t i = 0; i < ring->size(); ++i) {
            const GridPoint a = (*ring)[i];
            const GridPoint b = next(*ring, i);
            if (on_segment(a, b, from) && on_segment(a, b, to) &&
                dot(less(b, a), less(to, from)) > 0)
                return true;
        }
    return false;
}

/// Whether the rim of `a`, which nowhere crosses the rim of `b`, enters b's inside or runs along
/// its rim in the same sense (both have their inside on the left, so they then overlap).
bool rim_enters(const Polygon& a, const Polygon& b) {
    const Polygon fine = twice(b);
    for (const Ring* ring : rings_of(a))
        for (std::size_t i = 0; i < ring->size(); ++i) {
            const Ring stops = divided((*ring)[i], next(*ring, i), b);
            for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
                const GridPoint middle{stops[k].x + stops[k + 1].x, stops[k].y + stops[k + 1].y};
                const Where place = where(middle, fine);
                if (place == Where::inside ||
                    (place == Where::on_rim && runs_along_rim(stops[k], stops[k + 1], b)))
                    return true;
            }
        }
    return false;
}

bool rims_cross(const Polygon& a, const Polygon& b) {
    for (const Ring* one : rings_of(a))
        for (std::size_t i = 0; i < one->size(); ++i) {
            const Box box = edge_box((*one)[i], next(*one, i));
            for (const Ring* two : rings_of(b))
                for (std::size_t k = 0; k < two->size(); ++k)
                    if (boxes_within(box, edge_box((*two)[k], next(*two, k)), 1) &&
                        cross_inside((*one)[i], next(*one, i), (*two)[k], next(*two, k)))
                        return true;
        }
    return false;
}

bool rims_apart(const Polygon& a, const Polygon& b, Um gap) {
    for (const Ring* one : rings_of(a))
        for (std::size_t i = 0; i < one->size(); ++i) {
            const Box box = edge_box((*one)[i], next(*one, i));
            for (const Ring* two : rings_of(b))
                for (std::size_t k = 0; k < two->size(); ++k)
                    if (boxes_within(box, edge_box((*two)[k], next(*two, k)), gap) &&
                        !segments_apart((*one)[i], next(*one, i), (*two)[k], next(*two, k), gap))
                        return false;
        }
    return true;
}

} // namespace

Ring lying(const Ring& ring, Turn turn, GridPoint by) {
    Ring out;
    out.reserve(ring.size());
    const long double angle = turn.millidegrees * std::numbers::pi_v<long double> / 180'000.0L;
    const long double c = std::cos(angle);
    const long double s = std::sin(angle);
    for (const GridPoint& p : ring) {
        GridPoint q = p;
        if (turn.millidegrees % 90'000 == 0) {
            for (int quarter = 0; quarter < turn.millidegrees / 90'000; ++quarter)
                q = {-q.y, q.x};
        } else {
            const auto x = static_cast<long double>(p.x);
            const auto y = static_cast<long double>(p.y);
            q = {std::llround(c * x - s * y), std::llround(s * x + c * y)};
        }
        out.push_back({q.x + by.x, q.y + by.y});
    }
    return out;
}

Int128 twice_area(const Ring& ring) {
    Int128 sum = 0;
    for (std::size_t i = 0; i < ring.size(); ++i)
        sum += cross(ring[i], next(ring, i));
    return sum;
}

bool is_simple(const Ring& ring) {
    const std::size_t n = ring.size();
    if (n < 3)
        return false;
    for (std::size_t i = 0; i < n; ++i) {
        const GridPoint a = ring[i];
        const GridPoint b = next(ring, i);
        if (a == b)
            return false;
        const GridPoint c = next(ring, i + 1 == n ? 0 : i + 1);
        if (side(a, b, c) == 0 && dot(less(b, a), less(c, b)) < 0)
            return false; // turns straight back
        const Box box = edge_box(a, b);
        for (std::size_t k = i + 2; k < n; ++k) {
            if (i == 0 && k + 1 == n)
                continue; // neighbours round the corner
            if (boxes_within(box, edge_box(ring[k], next(ring, k)), 1) &&
                meet(a, b, ring[k], next(ring, k)))
                return false;
        }
    }
    return true;
}

Where where(GridPoint point, const Ring& ring) {
    bool inside = false;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint a = ring[i];
        const GridPoint b = next(ring, i);
        if (on_segment(a, b, point))
            return Where::on_rim;
        if ((a.y > point.y) != (b.y > point.y)) {
            const int s = side(a, b, point);
            if ((b.y > a.y) == (s > 0))
                inside = !inside;
        }
    }
    return inside ? Where::inside : Where::outside;
}

Where where(GridPoint point, const Polygon& polygon) {
    const Where outer = where(point, polygon.outer);
    if (outer != Where::inside)
        return outer;
    for (const Ring& hole : polygon.holes) {
        const Where in_hole = where(point, hole);
        if (in_hole != Where::outside)
            return in_hole == Where::on_rim ? Where::on_rim : Where::outside;
    }
    return Where::inside;
}

bool segments_apart(GridPoint a, GridPoint b, GridPoint c, GridPoint d, Um gap) {
    return !meet(a, b, c, d) && point_apart(a, c, d, gap) && point_apart(b, c, d, gap) &&
           point_apart(c, a, b, gap) && point_apart(d, a, b, gap);
}

bool polygons_apart(const Polygon& a, const Polygon& b, Um gap) {
    if (gap > 0 && !rims_apart(a, b, gap))
        return false;
    if (gap > 0)
        return where(a.outer.front(), b) == Where::outside &&
               where(b.outer.front(), a) == Where::outside;
    return !rims_cross(a, b) && !rim_enters(a, b) && !rim_enters(b, a);
}

bool ring_within(const Ring& inner, const Polygon& outer) {
    const Polygon whole{outer.outer, {}};
    const Polygon fine = twice(whole);
    if (rims_cross({inner, {}}, whole))
        return false;
    for (std::size_t i = 0; i < inner.size(); ++i) {
        const Ring stops = divided(inner[i], next(inner, i), whole);
        for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
            const GridPoint middle{stops[k].x + stops[k + 1].x, stops[k].y + stops[k + 1].y};
            if (where(middle, fine) == Where::outside)
                return false;
        }
    }
    return true;
}

std::vector<const Ring*> rings_of(const Polygon& polygon) {
    std::vector<const Ring*> out{&polygon.outer};
    for (const Ring& hole : polygon.holes)
        out.push_back(&hole);
    return out;
}

} // namespace pelt::verify
