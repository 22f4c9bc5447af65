// SPDX-License-Identifier: MIT
// What rows and pages of quotes share. Inside report/ only.
#pragma once

#include "report/quote.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// Minutes as hours with two decimals, to the nearest.
std::string hours(double minutes);

/// Warnings, and what the price does not hold.
std::vector<std::string> remarks_of(const QuoteRow& row);

} // namespace pelt::report
