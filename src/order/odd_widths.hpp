// SPDX-License-Identifier: MIT
// Rolls in stock that are wider than the film by less than a step of the ruler. Inside order/ only.
#pragma once

#include "model/plan.hpp"

namespace pelt::order {

/// A piece as wide as the film's usable width, where that is no whole step, is cut off a wider roll
/// at the next whole step. A roll on which that step lies beyond the usable width gives the piece
/// all of its own width: this adds the shapes for such rolls. Straight cutting only.
void add_shapes_for_odd_widths(Job& job);

} // namespace pelt::order
