// SPDX-License-Identifier: MIT
#include "report/svg_text.hpp"

#include "model/utf8.hpp"
#include "report/decimal.hpp"

#include <cmath>

namespace pelt::report {
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

std::string svg_arrow(double x, double y, double length, double degrees) {
    const std::string turn =
        degrees == 0 ? "" : " rotate(" + decimal(-std::llround(degrees * 1000), 3, 0) + ")";
    return "<path class=\"arrow\" transform=\"translate(" + svg_number(x) + " " + svg_number(y) +
           ")" + turn + " scale(" + svg_number(length) +
           ")\" d=\"M-0.5-0.08H0.12V-0.26L0.5 0L0.12 0.26V0.08H-0.5Z\"/>\n";
}

} // namespace pelt::report
