// SPDX-License-Identifier: MIT
// What the marks on a drawing of a roll mean, and what a roll is called.
#pragma once

#include "report/draw/picture.hpp"
#include "report/facts.hpp"
#include "report/numbers.hpp"
#include "report/report.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace pelt::report {

/// One row a kind of mark that the sheet's drawings have, in letters of this size; for drawings that
/// say sizes.
draw::Picture legend_picture(const Sheet& sheet, double size, const draw::Letters& letters);
/// The same in as few lines as fit a width, for drawings that have no more than numbers.
draw::Picture legend_lines(const Sheet& sheet, double size, double width,
                           const draw::Letters& letters);

/// A part of a roll that is drawn by itself.
struct StretchOfRoll {
    std::size_t used_roll = 0; ///< index into the layout's rolls
    Um from = 0;
    Um to = 0;
};
/// The same of what is drawn there, for drawings that say sizes.
draw::Picture legend_of_stretch(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                                const StretchOfRoll& stretch, double size, double width,
                                const draw::Letters& letters);

/// "Roll new 1: 14.211 m × 1524 mm".
std::string roll_title(const Sheet& sheet, std::size_t used_roll, const Measures& measures);

} // namespace pelt::report
