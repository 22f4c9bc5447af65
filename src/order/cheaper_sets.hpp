// SPDX-License-Identifier: MIT
// Sets of lengths that would be cheaper to buy than what is known. Inside order/ only.
#pragma once

#include "order/purchase.hpp"

#include <vector>

namespace pelt::order {

/// Lengths to buy, the longest first.
struct Set {
    std::vector<Um> lengths;
    Um total = 0;
    Money cost;
};

struct CheaperSets {
    std::vector<Set> sets; ///< the cheapest first
    bool all = true;       ///< false: there may be more, of many rolls or too many to count
};

/// All sets of an offer's lengths that are together `least` long or longer and cost less than
/// `below`. No length need be longer than the first that reaches `most`.
CheaperSets cheaper_sets(const Film& film, Um least, Um most, Money below);

} // namespace pelt::order
