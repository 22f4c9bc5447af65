// SPDX-License-Identifier: MIT
// Looking on for a shorter layout until somebody says stop: what `--time` alone asks for. Inside
// order/ only.
#pragma once

#include "order/shelf.hpp"

namespace pelt::order {

/// Fills shelf and new film with the effort given, as `fill_from_shelf` does, then goes on for as
/// long as the watch lets it. Where the whole job lies on one roll, one search goes on there until
/// it is stopped or its layout is proved to be the shortest. Where it lies on several, the whole
/// choice of rolls is made again with twice the effort each time: at most half the time is then
/// spent on what was looked at before. What is found is never worse than with the effort given.
FromShelf look_on_from_shelf(Job& job, const Shelf& shelf, const SpareToBuy& spare,
                             const nest::Effort& effort, const nest::Watch& watch, Faults& faults);

} // namespace pelt::order
