// SPDX-License-Identifier: MIT
// A vehicle as a table, the other way round. Inside read/ only; read.hpp shows it.
#pragma once

#include "model/vehicle.hpp"

#include <string>
#include <vector>

namespace pelt::read {

/// A line of cells, quoted where they must be (RFC 4180), LF. Texts that a spreadsheet would run as
/// a formula get an apostrophe in front.
std::string table_line(const std::vector<std::string>& cells);

/// "1380", "12.5": a reading that the table reader takes. Never three decimals, which could be
/// thousands.
std::string table_number(double value);

} // namespace pelt::read
