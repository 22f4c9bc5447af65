// SPDX-License-Identifier: MIT
// Where a seam runs. Inside piece/ only.
#pragma once

#include "model/piece.hpp"
#include "piece/divide.hpp"

namespace pelt::piece {

/// Measured on the panel (its box in the piece frame) from the nearer edge. Edges of panels drawn
/// with their nose up or down are named as they are drawn.
SeamPlace place_of(const Divide& line, const Box& panel, Heading heading);

} // namespace pelt::piece
