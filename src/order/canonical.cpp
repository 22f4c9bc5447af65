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

/// Negative where `a` comes first, 0 where only their ids differ.
int compared_by_shape(const Piece& a, const Piece& b) {
    const auto first_is = [](bool smaller) { return smaller ? -1 : 1; };
    const DoubleArea area_a = area_of(a.shapes.front().outline);
    const DoubleArea area_b = area_of(b.shapes.front().outline);
    if (area_a != area_b)
        return first_is(area_a > area_b);
    const Ring ring_a = from_low_corner(a.shapes.front().outline.outer);
    const Ring ring_b = from_low_corner(b.shapes.front().outline.outer);
    if (ring_a != ring_b)
        return first_is(ring_a < ring_b);
    const DoubleArea wrapped_a = area_of(a.wrapped);
    const DoubleArea wrapped_b = area_of(b.wrapped);
    const auto rest_a = std::tuple(a.direction, wrapped_a, a.ids.size());
    const auto rest_b = std::tuple(b.direction, wrapped_b, b.ids.size());
    return rest_a == rest_b ? 0 : first_is(rest_a < rest_b);
}

bool before(const Piece& a, const Piece& b) {
    const int shapes = compared_by_shape(a, b);
    return shapes != 0 ? shapes < 0 : a.ids < b.ids;
}

} // namespace

void sort_canonically(std::vector<Piece>& pieces) {
    std::sort(pieces.begin(), pieces.end(), before);
}

bool come_before(std::vector<Piece> pieces, std::vector<Piece> others) {
    sort_canonically(pieces);
    sort_canonically(others);
    for (std::size_t i = 0; i < pieces.size() && i < others.size(); ++i)
        if (const int shapes = compared_by_shape(pieces[i], others[i]); shapes != 0)
            return shapes < 0;
    return pieces.size() < others.size();
}

} // namespace pelt::order
