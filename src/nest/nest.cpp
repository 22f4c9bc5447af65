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

} // namespace pelt::nest
