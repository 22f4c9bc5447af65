// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace pelt::report {

/// The characters of a text; every byte that is not part of well-formed UTF-8 (RFC 3629: no
/// overlong forms, no surrogates) becomes U+FFFD.
std::u32string code_points(std::string_view text);
std::string utf8(char32_t c);

/// Columns that a text takes in a terminal of fixed pitch: 0 for combining marks, 2 for the wide
/// characters of East Asia and for pictures (Unicode Standard Annex 11, its wide blocks; ranges
/// from memory), else 1.
int display_width(std::string_view text);

} // namespace pelt::report
