// SPDX-License-Identifier: MIT
#include "order/canonical.hpp"

#include <algorithm>
#include <tuple>

namespace pelt::order {
namespace {

DoubleArea area_of(const Polygon& polygon) {
    DoubleArea sum = doubled_area(polygon.outer);
    for (const Ring& hole : polygon.holes)
        sum += doubled_area(hole);
    return sum;
}

/// Rings compare by their points seen from their own low corner, so that the frame's origin
/// (where the tape began) does not matter.
Ring from_low_corner(const Ring& ring) {
    const Box box = box_of(ring);
    return placed(ring, no_turn, {-box.low.x, -box.low.y});
}

bool before(const Piece& a, const Piece& b) {
    const DoubleArea area_a = area_of(a.shapes.front().outline);
    const DoubleArea area_b = area_of(b.shapes.front().outline);
    if (area_a != area_b)
        return area_a > area_b;
    const Ring ring_a = from_low_corner(a.shapes.front().outline.outer);
    const Ring ring_b = from_low_corner(b.shapes.front().outline.outer);
    if (ring_a != ring_b)
        return ring_a < ring_b;
    const DoubleArea wrapped_a = area_of(a.wrapped);
    const DoubleArea wrapped_b = area_of(b.wrapped);
    return std::tie(a.direction, wrapped_a, a.ids) < std::tie(b.direction, wrapped_b, b.ids);
}

} // namespace

void sort_canonically(std::vector<Piece>& pieces) {
    std::sort(pieces.begin(), pieces.end(), before);
}

} // namespace pelt::order
