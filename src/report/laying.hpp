// SPDX-License-Identifier: MIT
// The order in which pieces are laid on the vehicle (common practice, no source):
//   door jambs; then from the top down and from the middle out: roof and pillars, hood, rear lids
//   and spoilers; the left side from front to rear, the right side; what has no known name;
//   bumpers; small parts last.
// A panel is known by the words of its name (an extra by its own), else of its group; among equals
// the order of the vehicle file holds, so moving a panel in the file moves it in the list.
// Of one panel inlays come first, then the parts, each after those that it laps over.
#pragma once

#include "model/plan.hpp"

#include <cstddef>
#include <vector>

namespace pelt::report {

/// Indices into `ids`, in the order of laying. One vehicle is finished before the next begins.
std::vector<std::size_t> laying_order(const Job& job, const std::vector<PieceId>& ids);

} // namespace pelt::report
