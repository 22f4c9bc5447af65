// SPDX-License-Identifier: MIT
#include "model/utf8.hpp"

#include <algorithm>
#include <array>
#include <cstddef>

namespace pelt {
namespace {

constexpr char32_t replacement = 0xFFFD;

bool continues(std::string_view text, std::size_t at) {
    return at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U;
}

struct Range {
    char32_t first;
    char32_t last;
};

template <std::size_t N>
bool within(char32_t c, const std::array<Range, N>& ranges) {
    return std::any_of(ranges.begin(), ranges.end(),
                       [c](const Range& r) { return c >= r.first && c <= r.last; });
}

constexpr std::array<Range, 8> no_columns{{{0x0300, 0x036F},
                                           {0x0483, 0x0489},
                                           {0x0591, 0x05BD},
                                           {0x064B, 0x065F},
                                           {0x200B, 0x200F},
                                           {0x20D0, 0x20FF},
                                           {0xFE00, 0xFE0F},
                                           {0xFE20, 0xFE2F}}};
constexpr std::array<Range, 8> two_columns{{{0x1100, 0x115F},
                                            {0x2E80, 0x303E},
                                            {0x3041, 0xA4CF},
                                            {0xAC00, 0xD7A3},
                                            {0xF900, 0xFAFF},
                                            {0xFE30, 0xFE6F},
                                            {0xFF00, 0xFF60},
                                            {0x1F300, 0x3FFFD}}};

} // namespace

Decoded decoded(std::string_view text, std::size_t at) {
    const auto first = static_cast<unsigned char>(text[at]);
    if (first < 0x80)
        return {first, 1, true};
    const std::size_t bytes = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4)
        return {replacement, 1, false};
    char32_t c = first & (0xFFU >> (bytes + 1));
    for (std::size_t i = 1; i < bytes; ++i) {
        if (!continues(text, at + i))
            return {replacement, 1, false};
        c = (c << 6U) | (static_cast<unsigned char>(text[at + i]) & 0x3FU);
    }
    constexpr std::array<char32_t, 5> least{0, 0, 0x80, 0x800, 0x10000};
    if (c < least[bytes] || c > 0x10FFFF || (c >= 0xD800 && c <= 0xDFFF))
        return {replacement, 1, false};
    return {c, bytes, true};
}

std::u32string code_points(std::string_view text) {
    std::u32string out;
    for (std::size_t at = 0; at < text.size();) {
        const Decoded next = decoded(text, at);
        out.push_back(next.c);
        at += next.bytes;
    }
    return out;
}

std::string utf8(char32_t c) {
    const auto byte = [](char32_t value) { return static_cast<char>(value); };
    if (c < 0x80)
        return {byte(c)};
    if (c < 0x800)
        return {byte(0xC0U | (c >> 6U)), byte(0x80U | (c & 0x3FU))};
    if (c < 0x10000)
        return {byte(0xE0U | (c >> 12U)), byte(0x80U | ((c >> 6U) & 0x3FU)),
                byte(0x80U | (c & 0x3FU))};
    return {byte(0xF0U | (c >> 18U)), byte(0x80U | ((c >> 12U) & 0x3FU)),
            byte(0x80U | ((c >> 6U) & 0x3FU)), byte(0x80U | (c & 0x3FU))};
}

bool is_control(char32_t c) {
    return c < 0x20 || (c >= 0x7F && c < 0xA0) || (c >= 0x202A && c <= 0x202E) ||
           (c >= 0x2066 && c <= 0x2069);
}

std::string printable(std::string_view text) {
    std::string out;
    for (const char32_t c : code_points(text))
        out += is_control(c) ? "?" : utf8(c);
    return out;
}

int display_width(char32_t c) {
    if (within(c, no_columns))
        return 0;
    return within(c, two_columns) ? 2 : 1;
}

int display_width(std::string_view text) {
    int width = 0;
    for (const char32_t c : code_points(text))
        width += display_width(c);
    return width;
}

} // namespace pelt
