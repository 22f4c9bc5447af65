// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace pelt::report {

/// Eight hexadecimal digits that tell one set of files from another: the CRC-32 of ITU-T V.42
/// (clause 8.1.1.6.2; polynomial 04C11DB7, reflected) over the texts, a NUL after each. It finds
/// mix-ups, not forgers.
std::string check_code(const std::vector<std::string_view>& texts);

/// The CRC-32 itself, of one text.
std::string crc32_hex(std::string_view bytes);

} // namespace pelt::report
