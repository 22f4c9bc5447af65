// SPDX-License-Identifier: MIT
#include "verify/exact.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pelt::verify {
namespace {

int sign(Int128 value) {
    return value > 0 ? 1 : value < 0 ? -1 : 0;
}

} // namespace

int side(GridPoint a, GridPoint b, GridPoint p) {
    return sign(cross(b - a, p - a));
}

bool on_segment(GridPoint a, GridPoint b, GridPoint p) {
    return side(a, b, p) == 0 && dot(p - a, p - b) <= 0;
}

bool cross_inside(GridPoint a, GridPoint b, GridPoint c, GridPoint d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

bool share_a_point(GridPoint a, GridPoint b, GridPoint c, GridPoint d) {
    return cross_inside(a, b, c, d) || on_segment(a, b, c) || on_segment(a, b, d) ||
           on_segment(c, d, a) || on_segment(c, d, b);
}

// The distance from p to the line is |cross| / length, so it is compared squared.
bool point_apart(GridPoint p, GridPoint a, GridPoint b, Um gap) {
    const Int128 square = static_cast<Int128>(gap) * gap;
    const Int128 length = dot(b - a, b - a);
    const Int128 along = dot(p - a, b - a);
    if (along <= 0)
        return dot(p - a, p - a) >= square;
    if (along >= length)
        return dot(p - b, p - b) >= square;
    const Int128 height = cross(b - a, p - a);
    return height * height >= square * length;
}

// Of two segments without a common point an end of one is nearest to the other.
bool segments_apart(GridPoint a, GridPoint b, GridPoint c, GridPoint d, Um gap) {
    return !share_a_point(a, b, c, d) && point_apart(a, c, d, gap) && point_apart(b, c, d, gap) &&
           point_apart(c, a, b, gap) && point_apart(d, a, b, gap);
}

Ring lying(const Ring& ring, Turn turn, GridPoint by) {
    Ring out;
    out.reserve(ring.size());
    const int quarters = turn.millidegrees % 90'000 == 0 ? turn.millidegrees / 90'000 : -1;
    const long double angle = turn.millidegrees * std::numbers::pi_v<long double> / 180'000.0L;
    const long double c = std::cos(angle);
    const long double s = std::sin(angle);
    for (const GridPoint& p : ring) {
        GridPoint q = p;
        for (int quarter = 0; quarter < quarters; ++quarter)
            q = {-q.y, q.x};
        if (quarters < 0) {
            const auto x = static_cast<long double>(p.x);
            const auto y = static_cast<long double>(p.y);
            q = {std::llround(c * x - s * y), std::llround(s * x + c * y)};
        }
        out.push_back(q + by);
    }
    return out;
}

Polygon lying(const Polygon& polygon, Turn turn, GridPoint by) {
    Polygon out{lying(polygon.outer, turn, by), {}};
    for (const Ring& hole : polygon.holes)
        out.holes.push_back(lying(hole, turn, by));
    return out;
}

Int128 twice_area(const Ring& ring) {
    Int128 sum = 0;
    for (std::size_t i = 0; i < ring.size(); ++i)
        sum += cross(ring[i], ring[i + 1 == ring.size() ? 0 : i + 1]);
    return sum;
}

Int128 twice_area(const Polygon& polygon) {
    Int128 sum = twice_area(polygon.outer);
    for (const Ring& hole : polygon.holes)
        sum += twice_area(hole);
    return sum;
}

Box box_around(const Ring& ring) {
    Box box{ring.front(), ring.front()};
    for (const GridPoint& p : ring) {
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
    }
    return box;
}

Box grown(const Box& box, Um by) {
    return {{box.low.x - by, box.low.y - by}, {box.high.x + by, box.high.y + by}};
}

} // namespace pelt::verify
