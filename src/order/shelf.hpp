// SPDX-License-Identifier: MIT
// What lies on the shelf, and the ways to use it. Inside order/ only.
//
// A job is cut from one batch but for its batch-free pieces. All new film is one batch, stock of
// one batch's name is one, and a roll whose batch is not known is a batch of its own. Tried are:
// all from one batch of stock; batch-free pieces from the rest of the stock and new film; all from
// new film, batch-free pieces from stock where they fit. Stock that costs something is also left
// out, the dearest first. Of few pieces every division among stock and new rolls is weighed as well
// (every_division.hpp). What is kept is the best by the objective; a search that finds no layout on
// stock proves nothing, so of many pieces stock that would just suffice may be passed over. Along
// outlines, where a search takes long, the ways are told apart by quick looks, the roomiest rolls
// that seemed too small are looked at once more with all effort, and the best way is laid with all
// effort.
#pragma once

#include "model/order.hpp"
#include "order/fill.hpp"

#include <vector>

namespace pelt::order {

/// The rolls of one film, in the order of their file, and what each is worth.
struct Shelf {
    std::vector<Roll> rolls;
    std::vector<CostOfLength> costs;
};

/// The rolls of that film; warns when there are rolls and none of them is.
Shelf shelf_of(const std::vector<StockRoll>& stock, const Film& film, Faults& faults);

struct FromShelf {
    nest::Result result;
    std::optional<ShortStock> short_stock; ///< what the warning says
    bool cheapest = false;                 ///< proved: whatever holds the pieces costs no less
};

/// Fills stock and new rolls in the best way. The job's rolls are then the shelf's and, behind
/// them, those that it had. `spare` is bought with new film. Work that is half done goes on in
/// one batch: what is missing is then new film of that batch, and a fault of severity job. Warns
/// when stock of one batch does not hold the whole job.
FromShelf fill_from_shelf(Job& job, const Shelf& shelf, const SpareToBuy& spare,
                          const nest::Effort& effort, const nest::Watch& watch, Faults& faults);

} // namespace pelt::order
