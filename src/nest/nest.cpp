// SPDX-License-Identifier: MIT
#include "nest/nest.hpp"

#include "nest/contour/contour.hpp"

namespace pelt::nest {

// One full-width crosscut a piece, on the first roll.
Result nest(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch) {
    if (goal.by == CutBy::contour)
        return contour::nest(pieces, rolls, goal, effort, watch);
    Layout layout;
    UsedRoll used;
    const Um width = rolls.front().width;
    const Um trim = rolls.front().trim;
    Int128 area = 0;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Box box = box_of(pieces[i].shapes.front().outline.outer);
        for (std::size_t copy = 0; copy < pieces[i].ids.size(); ++copy) {
            const Um x = used.length;
            used.placements.push_back({i, copy, 0, no_turn, {x - box.low.x, trim - box.low.y}});
            used.length += box.along();
            used.cuts.push_back({{used.length, 0}, {used.length, width}});
            if (trim > 0)
                used.cuts.push_back({{x, trim}, {used.length, trim}});
            if (trim + box.across() < width)
                used.cuts.push_back({{x, trim + box.across()}, {used.length, trim + box.across()}});
            area += static_cast<Int128>(box.along()) * box.across();
        }
    }
    layout.bound = {static_cast<Um>((area + width - 2 * trim - 1) / (width - 2 * trim)), "area"};
    layout.rolls.push_back(std::move(used));
    return {std::move(layout), {}};
}

} // namespace pelt::nest
