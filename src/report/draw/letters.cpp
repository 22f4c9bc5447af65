// SPDX-License-Identifier: MIT
#include "report/draw/letters.hpp"

#include "model/utf8.hpp"

namespace pelt::report::draw {
namespace {

double em_of(char32_t c) {
    if (c >= U'0' && c <= U'9')
        return 0.64;
    if (std::u32string_view(U"mwMW@%×→←↑↓").find(c) != std::u32string_view::npos)
        return 1.0;
    if (std::u32string_view(U"#+<=>^~&").find(c) != std::u32string_view::npos)
        return 0.85;
    if (std::u32string_view(U"ijlI|.,:;'! ").find(c) != std::u32string_view::npos)
        return 0.41;
    if (c >= U'A' && c <= U'Z')
        return 0.79;
    return display_width(utf8(c)) == 2 ? 1.05 : 0.66;
}

} // namespace

double UnknownLetters::width_em(std::string_view text, Face face) const {
    double width = 0;
    for (const char32_t c : code_points(text))
        width += em_of(c);
    return face == Face::bold ? width * 1.15 : width;
}

} // namespace pelt::report::draw
