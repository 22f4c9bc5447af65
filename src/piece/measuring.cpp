// SPDX-License-Identifier: MIT
#include "develop/develop.hpp"
#include "piece/piece.hpp"

#include <cmath>

namespace pelt::piece {
namespace {

Um up_to_the_grid(double mm) {
    return static_cast<Um>(std::ceil(mm * um_per_mm));
}

} // namespace

Panel allowing_for_errors(Panel panel, const Film& film, Um tolerance) {
    const double reading = static_cast<double>(panel.tolerance.value_or(tolerance)) / um_per_mm;
    const develop::ReachBeyond beyond = develop::reach_beyond(panel, reading);
    const Um more = up_to_the_grid(beyond.across_axes);
    if (more == 0)
        return panel;
    // Film that may turn out to be the panel's lies beside the margins, which are left as they
    // were.
    const Handling handling = panel.allowances.handling.value_or(film.allowances.handling);
    panel.allowances.handling = Handling{handling.want + more, handling.least + more};
    panel.allowances.bleed =
        panel.allowances.bleed.value_or(film.allowances.bleed) + up_to_the_grid(beyond.any_way);
    return panel;
}

} // namespace pelt::piece
