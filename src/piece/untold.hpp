// SPDX-License-Identifier: MIT
// Where parts of a panel meet beside its outline, or in the corner of two laps, and no seam between
// them tells it. Piece frame. Inside piece/ only.
#pragma once

#include "piece/dividing.hpp"
#include "piece/file_lines.hpp"

#include <cstddef>
#include <vector>

namespace pelt::piece {

/// One part ends on top of the other, or the other one beneath it.
struct Untold {
    int upper_part = 1;
    int under_part = 2;
    double length_mm = 0;
    std::size_t line = 0; ///< along which of the lines, or along its lap
};

/// Seams are told by where the panel itself is divided. A tuck reaches beyond it, and a lap beyond
/// its line: where one part ends there over another one and no seam joins the two, they meet all
/// the same.
std::vector<Untold> untold(const DividedPanel& divided, const std::vector<PlacedLine>& lines,
                           Um overlap);

} // namespace pelt::piece
