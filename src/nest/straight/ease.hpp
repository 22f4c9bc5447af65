// SPDX-License-Identifier: MIT
// Among layouts of the same length the one that is easier at the table: what may be put in any
// order is put in a good one.
#pragma once

#include "nest/straight/block.hpp"

namespace pelt::nest::straight {

/// Sections of every stretch in the order of laying as far as they can be, so that pieces of one
/// area of the vehicle come together; the section with the largest film beside its pieces last, so
/// that it stays in one piece at the end. The same for columns and pieces within a section.
void put_in_order(const Problem& problem, Sheet& sheet);

} // namespace pelt::nest::straight
