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

/// Fields that are already written, joined and ended.
std::string csv_line(const std::vector<std::string>& fields);

} // namespace pelt::report
