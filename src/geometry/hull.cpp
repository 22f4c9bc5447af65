// SPDX-License-Identifier: MIT
#include "geometry/geometry.hpp"

#include <algorithm>

namespace pelt::geometry {
namespace {

constexpr int full = 360'000;
constexpr int half = 180'000;
constexpr int quarter = 90'000;

// Twice the signed area of a triangle; exact in 64 bits below 2^30.
Um turn_of(GridPoint a, GridPoint b, GridPoint c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

// A far point in the direction +x, turned.
GridPoint heading(int millidegrees) {
    constexpr Um far = 1'000'000'000;
    return placed({{far, 0}}, Turn{millidegrees}, {}).front();
}

Int128 cross(GridPoint a, GridPoint b) {
    return static_cast<Int128>(a.x) * b.y - static_cast<Int128>(a.y) * b.x;
}

Int128 dot(GridPoint a, GridPoint b) {
    return static_cast<Int128>(a.x) * b.x + static_cast<Int128>(a.y) * b.y;
}

} // namespace

Ring convex_hull(std::vector<GridPoint> points) {
    std::sort(points.begin(), points.end());
    points.erase(std::unique(points.begin(), points.end()), points.end());
    if (points.size() < 3)
        return points;
    Ring hull;
    const auto extend = [&hull](GridPoint p, std::size_t keep) {
        while (hull.size() > keep && turn_of(hull[hull.size() - 2], hull.back(), p) <= 0)
            hull.pop_back();
        hull.push_back(p);
    };
    for (const GridPoint& p : points)
        extend(p, 1);
    const std::size_t lower = hull.size();
    for (std::size_t i = points.size() - 1; i-- > 0;)
        extend(points[i], lower);
    hull.pop_back();
    return hull;
}

Turn laying_along(GridPoint from, GridPoint to) {
    GridPoint way{to.x - from.x, to.y - from.y};
    int whole = 0; // brings the way into the first quarter
    while (!(way.x > 0 && way.y >= 0)) {
        way = {way.y, -way.x};
        whole += quarter;
    }
    int low = 0; // the way's own angle is at least this and less than `high`
    int high = quarter;
    while (high - low > 1) {
        const int middle = (low + high) / 2;
        (cross(heading(middle), way) >= 0 ? low : high) = middle;
    }
    const bool nearer_high =
        cross(heading(low), way) > cross(way, heading(high)) && dot(heading(high), way) > 0;
    const int angle = whole + (nearer_high ? high : low);
    return {(2 * full - angle) % full};
}

// A hull is narrowest with one of its sides along (Houle and Toussaint 1988, "Computing the width
// of a set", from memory); turns are whole millidegrees, so the neighbours of each are tried too.
Narrowest narrowest(const Ring& ring) {
    const Ring hull = convex_hull(ring);
    Narrowest best{no_turn, box_of(ring).across()};
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const int along = laying_along(hull[i], hull[(i + 1) % hull.size()]).millidegrees;
        for (const int beside : {0, 1, -1}) {
            const Turn turn{(along + beside + full) % half};
            const Um across = box_of(placed(hull, turn, {})).across();
            if (across < best.across)
                best = {turn, across};
        }
    }
    return best;
}

} // namespace pelt::geometry
