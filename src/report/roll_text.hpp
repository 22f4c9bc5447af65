// SPDX-License-Identifier: MIT
// A roll drawn in the characters of a terminal: pieces in frames, numbers in them, running
// distances below. Roll frame: x along from the free end, y across from the near edge.
#pragma once

#include "model/layout.hpp"
#include "model/polygon.hpp"
#include "report/text_style.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// Sets left and right apart; the words say the same where there is room.
enum class Tint { plain, left, right };

/// One piece on the roll.
struct DrawnPiece {
    Polygon outline;
    std::vector<std::string> labels; ///< the fullest that there is room for is written
    Tint tint = Tint::plain;
};

/// Everything that a drawing of one roll shows.
struct RollSketch {
    std::string title = {}; ///< above the drawing; empty: none
    Um width = 0;
    Um length = 0; ///< that is taken off it
    std::vector<Flaw> flaws;
    std::vector<DrawnPiece> pieces;
    Um tick = 0;                    ///< between two running distances
    std::vector<std::string> ticks; ///< their texts, from the free end on
};

/// Lines of at most `style.width` columns: as many strips of the roll, one below the other, as it
/// takes for a piece of a hand's width to be seen. A roll of more strips than a person would look
/// through is refused with a sentence. What is too small for its number is listed below.
std::string roll_text(const RollSketch& roll, const TextStyle& style);

} // namespace pelt::report
