// SPDX-License-Identifier: MIT
// Boxes to write in by hand. Inside paper/ only.
#pragma once

#include "report/draw/letters.hpp"
#include "report/draw/picture.hpp"

#include <string>
#include <vector>

namespace pelt::report::paper {

inline constexpr double row_height = 7.5;      ///< room for handwriting
inline constexpr double head_row_height = 6.0; ///< of a table's head

struct Cell {
    std::string words; ///< printed small in the upper left corner, or in the middle of a head
    double share = 1;  ///< of the width
};

/// One row of boxes; the words of a head are bold, on a shade.
draw::Picture boxes(const std::vector<Cell>& cells, double width, double height, bool head,
                    const draw::Letters& letters);

} // namespace pelt::report::paper
