// SPDX-License-Identifier: MIT
#include "piece/piece.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::piece {
namespace {

Ring on_grid(const TaggedRing& ring) {
    Ring out;
    for (const Point& p : ring.points)
        out.push_back({std::llround(p.x * 1000), std::llround(p.y * 1000)});
    return out;
}

Um up_to(Um value, Um step) {
    return (value + step - 1) / step * step;
}

Ring rectangle(Box b) {
    return {b.low, {b.high.x, b.low.y}, b.high, {b.low.x, b.high.y}};
}

} // namespace

std::vector<Way> ways_to_cut(const Panel& panel, const DevelopedPanel& developed, const Film& film,
                             const Wishes& wishes, int vehicle_index, int panel_index,
                             Faults& faults) {
    Way out;
    for (const Side side : sides_of(panel.sides)) {
        Piece piece;
        piece.direction = panel.direction.value_or(film.direction);
        piece.wrapped.outer = on_grid(developed.blanks.front().outline);
        Box box = box_of(piece.wrapped.outer);
        const Um margin = film.allowances.handling.want;
        const Um ruler = film.allowances.ruler;
        box.low = {box.low.x - margin, box.low.y - margin};
        box.high = {box.low.x + up_to(box.along() + margin, ruler),
                    box.low.y + up_to(box.across() + margin, ruler)};
        if (box.across() > film.usable_width()) {
            faults.push_back(
                {Severity::job, panel.place, panel.name, "is wider than the film", ""});
            return {};
        }
        piece.shapes.push_back({{rectangle(box), {}}, {no_turn}});
        for (int copy = 1; copy <= panel.count * panel.faces * wishes.times; ++copy)
            piece.ids.push_back(
                {vehicle_index, panel_index, side, copy, 1, 1, PieceKind::main, ""});
        out.pieces.push_back(std::move(piece));
    }
    return {out};
}

} // namespace pelt::piece
