// SPDX-License-Identifier: MIT
// Text as characters: UTF-8 and columns in a terminal.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace pelt {

/// The character at a byte of a text. What is not well-formed UTF-8 (RFC 3629: no overlong forms,
/// no surrogates) is one byte long and reads as U+FFFD.
struct Decoded {
    char32_t c = 0;
    std::size_t bytes = 1;
    bool well_formed = false;
};
Decoded decoded(std::string_view text, std::size_t at);

/// The characters of a text; every byte that is not part of well-formed UTF-8 becomes U+FFFD.
std::u32string code_points(std::string_view text);
std::string utf8(char32_t c);

/// True for what must not reach a terminal: control characters, and those that turn the direction
/// of writing.
bool is_control(char32_t c);

/// The text with a question mark for every control character, tabs and line ends included.
std::string printable(std::string_view text);

/// Columns that a character or a text takes in a terminal of fixed pitch: 0 for combining marks, 2
/// for the wide characters of East Asia and for pictures (Unicode Standard Annex 11, its wide
/// blocks; ranges from memory), else 1.
int display_width(char32_t c);
int display_width(std::string_view text);

} // namespace pelt
