// SPDX-License-Identifier: MIT
// From the search's poses to whole micrometres.
#pragma once

#include "nest/contour/scene.hpp"

#include <optional>
#include <vector>

namespace pelt::nest::contour {

/// The poses rounded to the grid and mended: where rounding brings two forms nearer than their gap,
/// one of them steps aside by a few micrometres. Nothing when that does not come to an end.
std::optional<std::vector<Pose>> onto_grid(const Problem& problem, const std::vector<Pose>& poses);

} // namespace pelt::nest::contour
