// SPDX-License-Identifier: MIT
// SVG in text: escapes and numbers, and an arrow.
#pragma once

#include "model/polygon.hpp"

#include <string>
#include <string_view>

namespace pelt::report {

/// Escaped for text and attribute values; characters that XML 1.0 forbids become U+FFFD.
std::string xml_text(std::string_view text);

/// A coordinate to a tenth of a millimetre, for labels; outlines are exact.
std::string svg_number(double mm);
/// A grid length in mm, exact.
std::string svg_mm(Um um);

/// An arrow of this length around its middle; degrees run against the clock.
std::string svg_arrow(double x, double y, double length, double degrees);

} // namespace pelt::report
