// SPDX-License-Identifier: MIT
#include "report/quote_words.hpp"

#include "report/decimal.hpp"

#include <cmath>
#include <cstdint>

namespace pelt::report {
namespace {

/// Hundredths of an hour, to the nearest.
std::int64_t hundredths(double minutes) {
    return std::llround(minutes * 100 / 60);
}

} // namespace

std::string hours(double minutes) {
    return decimal(hundredths(minutes), 2, 2);
}

std::vector<std::string> remarks_of(const QuoteRow& row) {
    std::vector<std::string> out = row.warnings;
    if (row.quote)
        out.insert(out.end(), row.quote->left_out.begin(), row.quote->left_out.end());
    return out;
}

} // namespace pelt::report
