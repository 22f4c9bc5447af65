// SPDX-License-Identifier: MIT
#include "report/quote_words.hpp"

#include "report/decimal.hpp"
#include "report/estimate.hpp"
#include "report/numbers.hpp"
#include "report/work_told.hpp"

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
    if (is_guessed(row))
        out.insert(out.begin(), std::string(not_measured) + ": its price and length are ranges");
    if (row.quote)
        for (const auto& texts : {row.quote->left_out, by_the_log(*row.quote)})
            out.insert(out.end(), texts.begin(), texts.end());
    return out;
}

bool is_guessed(const QuoteRow& row) {
    return row.quote && row.quote->range;
}

std::string range_of_money(const QuoteRange& range, const Price& price) {
    if (!range.low_total || !range.high_total)
        return "not known";
    return to_string(*range.low_total, price.digits) + " to " +
           money(*range.high_total, price.digits, price.currency);
}

} // namespace pelt::report
