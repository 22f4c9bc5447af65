// SPDX-License-Identifier: MIT
// Few pieces: every way to divide them among stock and new rolls. Inside order/ only.
//
// What a roll must hold decides how much is taken off it, so a job is a choice of pieces for each
// roll. For every set of pieces the search tells how short a length of each kind of film takes it,
// and how short one at least must be; from these the cheapest choice follows (a dynamic programme
// over sets, roll by roll), and from the least lengths what no choice can cost less than.
#pragma once

#include "order/fill.hpp"
#include "order/shelf.hpp"

#include <optional>

namespace pelt::order {

struct CheapestDivision {
    std::optional<Layout> layout; ///< none: no division holds the pieces
    Money at_least;               ///< proved: whatever holds the pieces costs no less
};

/// Whether there are few enough pieces. Straight cutting in any order only: a search along outlines
/// takes long and proves little, and an order of laying goes over all rolls.
bool can_try_every_division(const Job& job);

/// Of all pieces of the job; without spare. The shelf's rolls are the job's first.
/// `new_film_for_all`: new film may hold pieces that must be of one batch. Can be tried.
CheapestDivision cheapest_division(const Job& job, const Shelf& shelf, bool new_film_for_all,
                                   const nest::Effort& effort, const nest::Watch& watch);

} // namespace pelt::order
