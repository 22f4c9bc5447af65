// SPDX-License-Identifier: MIT
// What rows and pages of quotes share. Inside report/ only.
#pragma once

#include "report/quote.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// Minutes as hours with two decimals, to the nearest.
std::string hours(double minutes);

/// Warnings, what the price does not hold, and what a log changed.
std::vector<std::string> remarks_of(const QuoteRow& row);

/// Whether it is of a vehicle that was not measured.
bool is_guessed(const QuoteRow& row);

/// "2100.00 to 2600.00 EUR"; "not known" where an end is not.
std::string range_of_money(const QuoteRange& range, const Price& price);

} // namespace pelt::report
