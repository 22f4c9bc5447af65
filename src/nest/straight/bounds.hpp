// SPDX-License-Identifier: MIT
// Lengths that no layout can undercut.
#pragma once

#include "nest/straight/problem.hpp"

#include <string>

namespace pelt::nest::straight {

/// A rectangle and how often it must be placed; it may lie in any of its lies.
struct Demand {
    std::vector<Lie> lies;
    std::size_t count = 0;
};

struct Proof {
    Steps length = 0;
    std::string argument; ///< in the trade's words
};

/// A length that every layout of the rectangles on film of this usable width needs, whatever the
/// cuts.
Proof lower_bound(const std::vector<Demand>& demands, Steps width);

} // namespace pelt::nest::straight
