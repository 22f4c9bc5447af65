// SPDX-License-Identifier: MIT
#include "geometry/tidy.hpp"

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace pelt::geometry {
namespace {

DoubleArea cross(GridPoint a, GridPoint b, GridPoint c) {
    return static_cast<DoubleArea>(b.x - a.x) * (c.y - b.y) -
           static_cast<DoubleArea>(b.y - a.y) * (c.x - b.x);
}

DoubleArea magnitude(DoubleArea value) {
    return value < 0 ? -value : value;
}

bool is_crumb(GridPoint a, GridPoint b) {
    return std::abs(b.x - a.x) <= crumb && std::abs(b.y - a.y) <= crumb;
}

/// Which end of a short side to drop: the one that changes the area less.
std::size_t lighter_end(const Ring& ring, std::size_t first, std::size_t second) {
    const std::size_t n = ring.size();
    const GridPoint before = ring[(first + n - 1) % n];
    const GridPoint after = ring[(second + 1) % n];
    const DoubleArea without_first = magnitude(cross(before, ring[first], ring[second]));
    const DoubleArea without_second = magnitude(cross(ring[first], ring[second], after));
    return without_first <= without_second ? first : second;
}

/// A point that need not be there, if any, at `i` or next to it.
std::size_t superfluous(const Ring& ring, std::size_t i) {
    const std::size_t n = ring.size();
    const std::size_t before = (i + n - 1) % n;
    const std::size_t after = (i + 1) % n;
    if (cross(ring[before], ring[i], ring[after]) == 0)
        return i;
    if (is_crumb(ring[i], ring[after]))
        return lighter_end(ring, i, after);
    return n;
}

bool before(const Polygon& a, const Polygon& b) {
    return a.outer < b.outer;
}

} // namespace

Ring tidy(const Ring& ring) {
    Ring out = ring;
    std::size_t kept_in_a_row = 0;
    for (std::size_t i = 0; out.size() >= 3 && kept_in_a_row < out.size();) {
        const std::size_t drop = superfluous(out, i);
        if (drop == out.size()) {
            ++kept_in_a_row;
            i = (i + 1) % out.size();
            continue;
        }
        out.erase(out.begin() + static_cast<std::ptrdiff_t>(drop));
        kept_in_a_row = 0;
        // The neighbour before the gap may have become superfluous.
        i = (drop + out.size() - 1) % out.size();
    }
    if (out.size() < 3)
        return {};
    std::rotate(out.begin(), std::min_element(out.begin(), out.end()), out.end());
    return out;
}

std::vector<Polygon> tidy(std::vector<Polygon> polygons) {
    for (Polygon& polygon : polygons) {
        polygon.outer = tidy(polygon.outer);
        for (Ring& hole : polygon.holes)
            hole = tidy(hole);
        std::erase_if(polygon.holes, [](const Ring& hole) { return hole.empty(); });
        std::sort(polygon.holes.begin(), polygon.holes.end());
    }
    std::erase_if(polygons, [](const Polygon& polygon) { return polygon.outer.empty(); });
    std::sort(polygons.begin(), polygons.end(), before);
    return polygons;
}

} // namespace pelt::geometry
