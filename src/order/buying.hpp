// SPDX-License-Identifier: MIT
// From a layout to an order, and the ways of buying that make a layout cheaper. Inside order/ only.
#pragma once

#include "model/order.hpp"
#include "order/fill.hpp"

#include <vector>

namespace pelt::order {

/// Of the new rolls of a layout, in their order.
std::vector<Um> new_lengths(const Job& job, const Layout& layout);

/// The cheapest purchase of rolls of these lengths with spare film, and the next best. Throws
/// ProgramError where they cannot be bought.
Order buy(const Film& film, const std::vector<Um>& lengths, const SpareToBuy& spare);

/// The new rolls are then as long as what is bought of each, which is of the rolls' batch.
void set_what_is_bought(Job& job, const Layout& layout, Order& order);

struct NewFilm {
    nest::Result result;
    bool cheapest = false; ///< proved: whatever holds the copies costs no less
};

/// Places these copies on new film so that it is bought as cheaply as can be: first with as little
/// film as can be, then on every cheaper set of lengths that might hold the pieces, the cheapest
/// first. Which sets might: laid end to end (with a gap between two in contour cutting) the rolls
/// are one strip, so together they are not shorter than the shortest strip, which is known up to
/// what the search can find, and for which the bound is proved. Of sets beyond the first few dozen
/// none is tried. Along outlines the sets are tried quickly, the cheapest one with all effort where
/// that finds nothing: a job then takes two such searches, not dozens.
NewFilm fill_new_film(const Job& job, const Copies& copies, const SpareToBuy& spare,
                      const nest::Effort& effort, const nest::Watch& watch);

} // namespace pelt::order
