// SPDX-License-Identifier: MIT
// Comma-separated values: RFC 4180 quoting with LF at line ends, UTF-8 without a byte order mark.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace pelt::report {

/// A text as a field. What a spreadsheet could take for a formula (a text that begins with = + - @,
/// tab, CR or LF) gets an apostrophe in front, as OWASP advises; numbers must not come through
/// here.
std::string csv_text(std::string_view text);

/// "1.5", "-0.25": a number that is not whole, as fields have it. A text that looks like one is
/// quoted, so that quotes tell the two apart.
bool is_decimal(std::string_view field);

/// Fields that are already written, joined and ended.
std::string csv_line(const std::vector<std::string>& fields);

} // namespace pelt::report
