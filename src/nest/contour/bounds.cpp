// SPDX-License-Identifier: MIT
#include "nest/contour/bounds.hpp"

#include <algorithm>
#include <limits>

namespace pelt::nest::contour {
namespace {

Int128 doubled_area_of(const Polygon& polygon) {
    Int128 sum = doubled_area(polygon.outer);
    for (const Ring& hole : polygon.holes)
        sum += doubled_area(hole);
    return sum;
}

// Insides do not overlap and lie within usable width times length.
Bound by_area(std::span<const Piece> pieces, Um usable_width) {
    Int128 doubled = 0;
    for (const Piece& piece : pieces) {
        Int128 least = doubled_area_of(piece.shapes.front().outline);
        for (const CutShape& shape : piece.shapes)
            least = std::min(least, doubled_area_of(shape.outline));
        doubled += least * static_cast<Int128>(piece.ids.size());
    }
    const Int128 across = 2 * static_cast<Int128>(usable_width);
    return {static_cast<Um>((doubled + across - 1) / across),
            "the pieces' areas over the usable width"};
}

// Every piece takes at least its own extent along the film, in the shortest way that it may lie
// and that fits across.
Bound by_longest(std::span<const Piece> pieces, Um usable_width) {
    Bound bound{0, "the longest piece"};
    for (const Piece& piece : pieces) {
        Um shortest = std::numeric_limits<Um>::max();
        for (const CutShape& shape : piece.shapes)
            for (const Turn turn : shape.turns) {
                const Box box = box_of(placed(shape.outline.outer, turn, GridPoint{}));
                if (box.across() <= usable_width)
                    shortest = std::min(shortest, box.along());
            }
        if (shortest != std::numeric_limits<Um>::max() && !piece.ids.empty())
            bound.length = std::max(bound.length, shortest);
    }
    return bound;
}

} // namespace

Bound bound_of(std::span<const Piece> pieces, Um usable_width, Um, std::size_t) {
    if (pieces.empty() || usable_width <= 0)
        return {};
    Bound best = by_area(pieces, usable_width);
    for (Bound other : {by_longest(pieces, usable_width)})
        if (other.length > best.length)
            best = std::move(other);
    return best;
}

} // namespace pelt::nest::contour
