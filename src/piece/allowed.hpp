// SPDX-License-Identifier: MIT
// What a panel may have of a film: the panel's own allowances before the film's. Inside piece/
// only.
#pragma once

#include "model/film.hpp"
#include "model/vehicle.hpp"

#include <optional>

namespace pelt::piece {

struct Allowed {
    std::optional<Um> wrap; ///< none: nobody gave one
    Um bleed = 0;
    Handling handling;
    Um overlap = 0;
    Um flush = 0;
    Um ruler = um_per_mm;
    Um usable = 0; ///< width of the film less its trims
    Direction direction = Direction::one_way;
    bool free_turns = false; ///< may also lie askew
    bool wrap_of_film = false;   ///< the panel gives none
    bool holds_no_metal = false;   ///< the film's file says so
};

Allowed allowed_for(const Panel& panel, const Film& film);

} // namespace pelt::piece
