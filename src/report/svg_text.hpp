// SPDX-License-Identifier: MIT
// SVG in text: elements, numbers, and how much room letters take. Coordinates here are in mm as
// drawn, y down.
#pragma once

#include "model/polygon.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace pelt::report {

/// Escaped for text and attribute values; characters that XML 1.0 forbids become U+FFFD.
std::string xml_text(std::string_view text);

/// A coordinate to a tenth of a millimetre, for labels; outlines are exact.
std::string svg_number(double mm);
/// A grid length in mm, exact.
std::string svg_mm(Um um);

/// How wide a text will be at most, in units of its height, in the usual sans-serif fonts (widths
/// of letters from memory, on the wide side).
double text_width_em(std::string_view text);

/// An upright box, y down.
struct SvgBox {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    bool overlaps(const SvgBox& other) const {
        return x < other.x + other.width && other.x < x + width && y < other.y + other.height &&
               other.y < y + height;
    }
};

/// Text centred at a point; `turned` reads upwards.
std::string svg_label(std::string_view css_class, double x, double y, double size, bool turned,
                      std::string_view text);

} // namespace pelt::report
