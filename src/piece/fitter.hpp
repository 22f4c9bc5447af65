// SPDX-License-Identifier: MIT
// Where a fitter would divide a panel that is too wide: settled by the panel and the film alone,
// never by a layout. Common practice, no source. Inside piece/ only.
#pragma once

#include "piece/panel_job.hpp"
#include "piece/stretch.hpp"

#include <vector>

namespace pelt::piece {

/// Film beside a place that must stay clear through which no seam may run.
inline constexpr Um clear_of_zones = 50 * um_per_mm;

/// Places for the seams of one cell of the panel, each as its lines, the best first. The fewest
/// pieces; none narrower than the film's least piece where that can be; never nearer to a place
/// that must stay clear than `clear_of_zones`; along the vehicle, or level, before upright. Along:
/// full widths from the top, on a top from the left edge. Upright, or across: evenly about the
/// middle, or as near to that as can be. A front or a rear that is the same on its left and its
/// right: in its middle. Strips are reckoned with the margins that the film file wants. `cell` is
/// what strips have to cover. Empty: no place does.
std::vector<std::vector<Divide>> fitters_places(const TooWide& cell, const PanelJob& job);

} // namespace pelt::piece
