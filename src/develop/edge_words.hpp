// SPDX-License-Identifier: MIT
// The words by which `edges` entries name edges. Inside develop/ only.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"

namespace pelt::develop {

/// A fault for every `edges` entry whose word selects no edge of the blank, with the edge that
/// could be meant.
void check_edge_words(const Panel& panel, const Blank& blank, Faults& faults);

} // namespace pelt::develop
