// SPDX-License-Identifier: MIT
// Lengths that no layout can undercut, however it is cut.
#pragma once

#include "nest/straight/problem.hpp"

#include <string>

namespace pelt::nest::straight {

/// A rectangle and how often it must be placed; it may lie in any of its lies.
struct Demand {
    std::vector<Orientation> orientations;
    std::size_t count = 0;
    friend bool operator==(const Demand&, const Demand&) = default;
};

/// Of one, lying as small as it can.
Steps least_area(const Demand& demand);
/// Every rectangle of a problem.
std::vector<Demand> demands_of(const Problem& problem);
/// The same rectangles with the two directions exchanged.
std::vector<Demand> turned(std::vector<Demand> demands);

struct Proof {
    Steps length = 0;
    std::string argument; ///< in the trade's words
};

/// The best of all arguments: a length that every layout of the rectangles on film of this usable
/// width needs. Cheaper arguments only when there are very many kinds.
Proof lower_bound(const std::vector<Demand>& demands, Steps width);

} // namespace pelt::nest::straight
