// SPDX-License-Identifier: MIT
#include "piece/allowed.hpp"

#include "develop/develop.hpp"

#include <cmath>

namespace pelt::piece {

namespace {

Um up_to_the_grid(double mm) {
    return static_cast<Um>(std::ceil(mm * um_per_mm));
}

/// Film that may turn out to be the panel's lies beside the margins, which are left as they were.
void add_measuring_error(const Panel& panel, Um tolerance, Allowed& allowed) {
    const double reading = static_cast<double>(panel.tolerance.value_or(tolerance)) / um_per_mm;
    const develop::ReachBeyond beyond = develop::reach_beyond(panel, reading);
    allowed.handling.want += up_to_the_grid(beyond.across_axes);
    allowed.handling.least += up_to_the_grid(beyond.across_axes);
    allowed.bleed += up_to_the_grid(beyond.any_way);
}

} // namespace

Allowed allowed_for(const Panel& panel, const Film& film, Um tolerance) {
    const PanelAllowances& own = panel.allowances;
    const Allowances& general = film.allowances;
    Allowed out;
    out.wrap = own.wrap ? own.wrap : general.wrap;
    out.bleed = own.bleed.value_or(general.bleed);
    out.handling = own.handling.value_or(general.handling);
    out.overlap = own.overlap.value_or(general.overlap);
    out.flush = own.flush.value_or(general.flush);
    out.ruler = general.ruler;
    out.usable = film.usable_width();
    out.direction = panel.direction.value_or(film.direction);
    add_measuring_error(panel, tolerance, out);
    return out;
}

} // namespace pelt::piece
