// SPDX-License-Identifier: MIT
// `edges` of a panel: words that choose edges, and what is asked of them. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/fields.hpp"
#include "read/names.hpp"

namespace pelt::read {

/// Reads `edges` into a panel whose form has been read. Tells words that select no edge, and which
/// edge could be meant.
void read_edges(const Fields& fields, const Names& hardware, Panel& panel, Context& context);

} // namespace pelt::read
