// SPDX-License-Identifier: MIT
#include "model/polygon.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pelt {
namespace {

// Of angles to an eighth of a turn, by the first terms of their series: what is left out is below
// 1e-17. Only plain arithmetic, so that every machine turns alike.
double small_sine(double a) {
    double term = a;
    double sum = a;
    for (int k = 2; k <= 16; k += 2) {
        term *= -a * a / (k * (k + 1));
        sum += term;
    }
    return sum;
}

double small_cosine(double a) {
    double term = 1;
    double sum = 1;
    for (int k = 1; k <= 17; k += 2) {
        term *= -a * a / (k * (k + 1));
        sum += term;
    }
    return sum;
}

struct CosineAndSine {
    double cosine = 1;
    double sine = 0;
};

CosineAndSine cosine_and_sine(Turn turn) {
    constexpr double per_millidegree = std::numbers::pi / 180'000.0;
    const int quarters = (turn.millidegrees + 45'000) / 90'000;
    const double rest = (turn.millidegrees - quarters * 90'000) * per_millidegree;
    const double c = small_cosine(rest);
    const double s = small_sine(rest);
    switch (quarters & 3) {
    case 0:
        return {c, s};
    case 1:
        return {-s, c};
    case 2:
        return {-c, -s};
    default:
        return {s, -c};
    }
}

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
    const auto [c, s] = cosine_and_sine(turn);
    const auto x = static_cast<double>(p.x);
    const auto y = static_cast<double>(p.y);
    return {std::llround(c * x - s * y), std::llround(s * x + c * y)};
}

/// Whether a ray from the point towards +x crosses the ring an odd number of times.
bool is_within(GridPoint p, const Ring& ring) {
    bool within = false;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint a = ring[i];
        const GridPoint b = ring[(i + 1) % ring.size()];
        if ((a.y > p.y) == (b.y > p.y))
            continue;
        const Int128 side = Int128{b.x - a.x} * (p.y - a.y) - Int128{p.x - a.x} * (b.y - a.y);
        within = within != (b.y > a.y ? side > 0 : side < 0);
    }
    return within;
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

bool holds(const Polygon& polygon, GridPoint p) {
    return is_within(p, polygon.outer) &&
           std::none_of(polygon.holes.begin(), polygon.holes.end(),
                        [&](const Ring& hole) { return is_within(p, hole); });
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
