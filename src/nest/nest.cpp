// SPDX-License-Identifier: MIT
#include "nest/nest.hpp"

#include "nest/contour/contour.hpp"
#include "nest/straight/straight.hpp"

namespace pelt::nest {

Result nest(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch) {
    return goal.by == CutBy::contour ? contour::nest(pieces, rolls, goal, effort, watch)
                                     : straight::nest(pieces, rolls, goal, effort, watch);
}

Um new_length(const Layout& layout, std::span<const Roll> rolls) {
    Um length = 0;
    for (const UsedRoll& used : layout.rolls)
        length += rolls[used.roll].is_new ? used.length : 0;
    return length;
}

} // namespace pelt::nest
