// SPDX-License-Identifier: MIT
#include "order/odd_widths.hpp"

#include "geometry/geometry.hpp"

#include <set>

namespace pelt::order {
namespace {

std::set<Um> odd_widths(const Job& job) {
    const Um usable = job.film.usable_width();
    const Um step = job.film.allowances.ruler;
    const Um whole = (usable + step - 1) / step * step;
    std::set<Um> widths;
    for (const Roll& roll : job.rolls)
        if (const Um own = roll.width - 2 * roll.trim; own > usable && own < whole)
            widths.insert(own);
    return widths;
}

bool lies_across(Turn turn) {
    return turn == no_turn || turn == half_turn;
}

/// What is odd goes to the high sides, as in all rectangles.
Polygon rectangle_about(const Box& film, Um along, Um across) {
    const GridPoint low{film.low.x - (along - film.along()) / 2,
                        film.low.y - (across - film.across()) / 2};
    return {geometry::rectangle({low, {low.x + along, low.y + across}}), {}};
}

void add_widths(Piece& piece, const std::set<Um>& widths, Um usable) {
    const Box film = box_of(piece.wrapped.outer);
    const std::vector<CutShape> shapes = piece.shapes;
    for (const CutShape& shape : shapes) {
        const Box box = box_of(shape.outline.outer);
        const bool upright = lies_across(shape.turns.front());
        if ((upright ? box.across() : box.along()) != usable)
            continue;
        for (const Um width : widths)
            piece.shapes.push_back({upright ? rectangle_about(film, box.along(), width)
                                            : rectangle_about(film, width, box.across()),
                                    {shape.turns.front()}});
    }
}

} // namespace

void add_shapes_for_odd_widths(Job& job) {
    if (job.by != CutBy::straight)
        return;
    const std::set<Um> widths = odd_widths(job);
    if (widths.empty())
        return;
    for (Piece& piece : job.pieces)
        add_widths(piece, widths, job.film.usable_width());
}

} // namespace pelt::order
