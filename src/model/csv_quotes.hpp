// SPDX-License-Identifier: MIT
// Quotes around a field of comma-separated values (RFC 4180, section 2, rules 5 to 7).
#pragma once

#include <string>
#include <string_view>

namespace pelt {

/// In quotes, its own doubled.
std::string in_csv_quotes(std::string_view field);

} // namespace pelt
