// SPDX-License-Identifier: MIT
#pragma once

#include "report/facts.hpp"
#include "report/numbers.hpp"
#include "report/svg_label.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// One roll, drawn in its own frame of `width` × `height` mm.
struct RollDrawing {
    std::string svg;
    double width = 0;
    double height = 0;
};

/// The roll in true millimetres with its pieces, cuts and distances from the free end. Labels lie
/// inside their pieces; where there is no room a leader joins a number above the roll to its piece.
RollDrawing draw_roll(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                      std::size_t used_roll, const Measures& measures);

} // namespace pelt::report
