// SPDX-License-Identifier: MIT
// Panels that are divided, and what is asked of their pieces.
#pragma once

#include "cutting.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

namespace pelt::test {

inline Panel flat(double wide, double high, Heading forward = Heading::right) {
    Panel out = panel(size(wide, high));
    out.edges = {wrap("all", 0)};
    out.forward = forward;
    return out;
}

/// "its seam line 1, across, from 200 to 600 mm from the front edge", to the nearest millimetre.
inline std::string in_words(const SeamPlace& place) {
    const auto mm = [](Um um) { return std::to_string((um + 500) / 1000); };
    return (place.line.empty() ? "" : place.line + ", ") + place.run + ", " +
           (mm(place.nearer) == mm(place.farther)
                ? mm(place.nearer)
                : "from " + mm(place.nearer) + " to " + mm(place.farther)) +
           " mm from the " + place.edge;
}

/// Every way that is worth trying.
inline piece::Wishes thrifty() {
    piece::Wishes wishes;
    wishes.seams = Seams::thrifty;
    return wishes;
}

inline Film lapping(Um overlap_mm, Direction direction = Direction::one_way) {
    Film out = film(direction);
    out.allowances.overlap = overlap_mm * um_per_mm;
    return out;
}

inline SeamLine line(std::vector<Point> points, bool always = true) {
    return {std::move(points), always, {}};
}

/// The main part with this number on the first side.
inline const Piece& part(const piece::Way& way, int number) {
    for (const Piece& piece : way.pieces)
        if (piece.ids[0].part == number && piece.ids[0].kind == PieceKind::main)
            return piece;
    FAIL("no such part");
    return way.pieces.front();
}

inline double film_area(const piece::Way& way) {
    double sum = 0;
    for (const Piece& piece : way.pieces)
        sum += area_of(piece.wrapped) * static_cast<double>(piece.ids.size());
    return sum;
}

inline bool parts_fit(const piece::Way& way, Um usable) {
    for (const Piece& piece : way.pieces) {
        bool fits = false;
        for (const CutShape& shape : piece.shapes)
            for (const Turn turn : shape.turns)
                fits = fits || box_of(placed(shape.outline.outer, turn, {})).across() <= usable;
        if (!fits)
            return false;
    }
    return true;
}

} // namespace pelt::test
