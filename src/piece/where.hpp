// SPDX-License-Identifier: MIT
// Where a seam runs. Inside piece/ only.
#pragma once

#include "model/piece.hpp"
#include "piece/divide.hpp"

namespace pelt::piece {

/// Measured on the panel (its box in the piece frame) from the nearer edge. On a panel in the
/// middle of the vehicle left and right are the vehicle's; upper and lower, and what a panel of a
/// side drawn with its nose up or down has, are the drawing's.
SeamPlace place_of(const Divide& line, const Box& panel, Heading heading, bool in_the_middle);

} // namespace pelt::piece
