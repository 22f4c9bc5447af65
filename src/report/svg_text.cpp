// SPDX-License-Identifier: MIT
#include "report/svg_text.hpp"

#include "model/utf8.hpp"
#include "report/decimal.hpp"

#include <cmath>

namespace pelt::report {
namespace {

double width_em(char32_t c) {
    if (c >= U'0' && c <= U'9')
        return 0.64;
    if (std::u32string_view(U"mwMW@%×→←").find(c) != std::u32string_view::npos)
        return 0.98;
    if (std::u32string_view(U"ijlI|.,:;'! ").find(c) != std::u32string_view::npos)
        return 0.36;
    if (c >= U'A' && c <= U'Z')
        return 0.75;
    return display_width(utf8(c)) == 2 ? 1.05 : 0.64;
}

} // namespace

std::string xml_text(std::string_view text) {
    std::string out;
    for (const char32_t c : code_points(text)) {
        switch (c) {
        case U'&':
            out += "&amp;";
            break;
        case U'<':
            out += "&lt;";
            break;
        case U'>':
            out += "&gt;";
            break;
        case U'"':
            out += "&quot;";
            break;
        default:
            out += utf8((c < 0x20 && c != U'\t' && c != U'\n') || c == 0xFFFE || c == 0xFFFF
                            ? char32_t{0xFFFD}
                            : c);
        }
    }
    return out;
}

std::string svg_number(double mm) {
    return decimal(std::llround(mm * 10), 1, 0);
}

std::string svg_mm(Um um) {
    return decimal(um, 3, 0);
}

double text_width_em(std::string_view text) {
    double width = 0;
    for (const char32_t c : code_points(text))
        width += width_em(c);
    return width;
}

std::string svg_label(std::string_view css_class, double x, double y, double size, bool turned,
                      std::string_view text) {
    // Digits and capitals stand about 0.72 of the size high: this much below the middle they sit
    // in the middle.
    const double below = 0.36 * size;
    const std::string place =
        turned ? " transform=\"translate(" + svg_number(x + below) + " " + svg_number(y) +
                     ") rotate(-90)\""
               : " x=\"" + svg_number(x) + "\" y=\"" + svg_number(y + below) + "\"";
    return "<text class=\"" + std::string(css_class) + "\"" + place + " font-size=\"" +
           svg_number(size) + "\">" + xml_text(text) + "</text>\n";
}

} // namespace pelt::report
