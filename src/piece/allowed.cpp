// SPDX-License-Identifier: MIT
#include "piece/allowed.hpp"

namespace pelt::piece {

Allowed allowed_for(const Panel& panel, const Film& film) {
    const PanelAllowances& own = panel.allowances;
    const Allowances& general = film.allowances;
    Allowed out;
    out.wrap = own.wrap ? own.wrap : general.wrap;
    out.wrap_of_film = !own.wrap && general.wrap;
    out.holds_no_metal = film.holds_metal == HoldsMetal::no;
    out.bleed = own.bleed.value_or(general.bleed);
    out.handling = own.handling.value_or(general.handling);
    out.overlap = own.overlap.value_or(general.overlap);
    out.flush = own.flush.value_or(general.flush);
    out.ruler = general.ruler;
    out.usable = film.usable_width();
    out.direction = panel.direction.value_or(film.direction);
    return out;
}

} // namespace pelt::piece
