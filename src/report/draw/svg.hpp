// SPDX-License-Identifier: MIT
// A drawing as SVG elements, one millimetre a user unit.
#pragma once

#include "report/draw/picture.hpp"

#include <string>

namespace pelt::report::draw {

/// The looks as style rules, lines so many times as strong as on paper.
std::string svg_style(double line_scale);

/// Outlines to the micrometre, everything else to a tenth of a millimetre.
std::string to_svg(const Picture& picture);

enum class Ground { white, none };

/// The whole file: head, title, styles, the ground, the drawing.
std::string svg_file(const std::string& title, const std::string& style, const Picture& picture,
                     Ground ground = Ground::white);

} // namespace pelt::report::draw
