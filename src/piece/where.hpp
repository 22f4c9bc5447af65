// SPDX-License-Identifier: MIT
// Where a seam runs, in words. Inside piece/ only.
#pragma once

#include "piece/divide.hpp"

#include <string>

namespace pelt::piece {

/// "across, 720 mm from the front edge": measured on the panel (its box in the piece frame) from
/// the nearer edge, rounded to whole millimetres. Edges of panels drawn with their nose up or down
/// are named as they are drawn.
std::string where_of(const Divide& line, const Box& panel, Heading heading);

} // namespace pelt::piece
