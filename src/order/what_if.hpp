// SPDX-License-Identifier: MIT
// Other ways to do a job that might take less film, as jobs to be planned like any other.
#pragma once

#include "order/order.hpp"

#include <string>
#include <vector>

namespace pelt::order {

struct WhatIf {
    std::string what; ///< "with any number of turns of the film"
    Request request;
};

/// What could make the film shorter: a wider roll (the next common width), a freer direction, any
/// number of turns, another order of laying, a seam across the longest piece that binds the length,
/// an exact tape. `outcome` is what came of `request`, its binding pieces asked for.
std::vector<WhatIf> what_ifs(const Request& request, const Outcome& outcome);

/// New film of a plan.
Um new_length_of(const Plan& plan);

} // namespace pelt::order
