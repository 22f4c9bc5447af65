// SPDX-License-Identifier: MIT
// How marks are drawn: the one table of colours and lines, for SVG and paper. Greys and dashes
// carry the meaning; colour only helps, so that a copy in grey says the same.
#pragma once

#include "report/draw/picture.hpp"

#include <string_view>
#include <vector>

namespace pelt::report::draw {

/// A colour as 0xRRGGBB; below 0: none.
using Colour = int;
inline constexpr Colour none = -1;

struct LookRow {
    Look look;
    std::string_view name; ///< the class in SVG
    Colour fill = none;
    Colour stroke = none;
    double stroke_width = 0;         ///< millimetres on paper
    std::vector<double> dashes = {}; ///< millimetres on paper
};

const std::vector<LookRow>& looks();
const LookRow& row_of(Look look);

} // namespace pelt::report::draw
