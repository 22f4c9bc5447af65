// SPDX-License-Identifier: MIT
// Films and widths by what they cost, and what makes the difference.
#pragma once

#include "report/report.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report {

/// What a row costs; none where it is not known, or the film's prices are for a roll of another
/// width.
std::optional<Money> price_of(const ComparisonRow& row);

/// What the whole job costs the customer, labor included; none where film or labor has no price.
std::optional<Money> whole_job_of(const ComparisonRow& row);

/// A row of a comparison, and where it stands among those of its currency.
struct Ranked {
    const ComparisonRow* row = nullptr;
    std::optional<int> rank;   ///< from 1, the cheapest; equal ones alike; none: no price known
    std::optional<Money> more; ///< than the cheapest
    const ComparisonRow* cheapest = nullptr; ///< of its currency
};

/// By what the whole job costs where the comparison is by a shop's figures, else by the film that
/// is bought. The cheapest first, a currency after the other as they come; then those without a
/// price, then those that cannot be cut. Lives as long as the comparison.
std::vector<Ranked> ranked(const Comparison& comparison);

/// The same in the order of the rows.
std::vector<Ranked> ranks(const Comparison& comparison);

/// A sentence for every row that costs more than the cheapest: how much of it is for more film, how
/// much for its price a length, and what else differs.
std::vector<std::string> differences(const Comparison& comparison);

/// What to mind about the prices: other widths' and other currencies'.
std::vector<std::string> about_the_prices(const Comparison& comparison);

} // namespace pelt::report
