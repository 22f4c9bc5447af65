// SPDX-License-Identifier: MIT
#include "model/polygon.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pelt {
namespace {

GridPoint turned(GridPoint p, Turn turn) {
    switch (turn.millidegrees) {
    case 0:
        return p;
    case 90'000:
        return {-p.y, p.x};
    case 180'000:
        return {-p.x, -p.y};
    case 270'000:
        return {p.y, -p.x};
    default:
        break;
    }
    const double angle = turn.millidegrees * std::numbers::pi / 180'000.0;
    const double c = std::cos(angle);
    const double s = std::sin(angle);
    const auto x = static_cast<double>(p.x);
    const auto y = static_cast<double>(p.y);
    return {std::llround(c * x - s * y), std::llround(s * x + c * y)};
}

} // namespace

Box box_of(const Ring& ring) {
    Box box{ring.front(), ring.front()};
    for (const GridPoint& p : ring) {
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
    }
    return box;
}

Ring placed(const Ring& ring, Turn turn, GridPoint by) {
    Ring out;
    out.reserve(ring.size());
    for (const GridPoint& p : ring) {
        const GridPoint t = turned(p, turn);
        out.push_back({t.x + by.x, t.y + by.y});
    }
    return out;
}

Polygon placed(const Polygon& polygon, Turn turn, GridPoint by) {
    Polygon out{placed(polygon.outer, turn, by), {}};
    for (const Ring& hole : polygon.holes)
        out.holes.push_back(placed(hole, turn, by));
    return out;
}

DoubleArea doubled_area(const Ring& ring) {
    DoubleArea sum = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint& a = ring[i];
        const GridPoint& b = ring[(i + 1) % ring.size()];
        sum += static_cast<DoubleArea>(a.x) * b.y - static_cast<DoubleArea>(b.x) * a.y;
    }
    return sum;
}

} // namespace pelt
