// SPDX-License-Identifier: MIT
// Where a seam runs. Inside piece/ only.
#pragma once

#include "model/piece.hpp"
#include "piece/divide.hpp"

namespace pelt::piece {

/// Measured on the panel (its box in the piece frame) from the nearer edge; its points are left
/// out.
SeamPlace place_of(const Divide& line, const Box& panel, const Stand& stand);

} // namespace pelt::piece
