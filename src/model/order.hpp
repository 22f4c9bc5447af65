// SPDX-License-Identifier: MIT
// What to buy.
#pragma once

#include "model/length.hpp"
#include "model/money.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt {

/// One uncut length: `count` times `by`.
struct OrderLine {
    Length by;
    std::int64_t count = 0;
    std::optional<Money> price; ///< of one `by`; none: not known
    std::string batch;          ///< empty: not known
    Length length() const { return count * by; }
};

/// Another way to buy the same, and what it costs beyond the cheapest.
struct NextBest {
    std::vector<OrderLine> lines;
    Money total;
    Money more;
};

struct Order {
    std::vector<OrderLine> lines; ///< one per new roll of the plan, in their order
    std::optional<Money> total;   ///< none where a price is not known
    std::string currency;
    std::optional<NextBest> next_best = std::nullopt; ///< none: there is only one way
    Length length() const {
        Length sum;
        for (const OrderLine& line : lines)
            sum = sum + line.length();
        return sum;
    }
};

/// What rules of straight cutting cost: new film of the best layout found without them. None: not
/// asked for, or not a rule of this job.
struct RulesCost {
    std::optional<Um> any_turns; ///< however often film is turned on the table
    std::optional<Um> any_order; ///< pieces in any order
};

} // namespace pelt
