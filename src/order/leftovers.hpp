// SPDX-License-Identifier: MIT
// What straight cuts let fall. Inside order/ only.
#pragma once

#include "model/plan.hpp"

#include <vector>

namespace pelt::order {

/// The offcuts that the sheet calls worth keeping, of the batch of the first roll, in its frame:
/// usable film without a flaw, along and across the roll. None in contour cutting.
std::vector<Box> offcuts_worth_keeping(const Job& job, const Layout& layout);

} // namespace pelt::order
