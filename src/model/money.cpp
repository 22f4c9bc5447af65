// SPDX-License-Identifier: MIT
#include "model/money.hpp"

namespace pelt {

std::string to_string(Money amount, int digits) {
    const bool negative = amount.micros() < 0;
    const auto magnitude =
        static_cast<std::uint64_t>(negative ? -amount.micros() : amount.micros());
    const auto per_unit = static_cast<std::uint64_t>(Money::per_unit);
    std::string decimals = std::to_string(magnitude % per_unit + per_unit).substr(1);
    while (static_cast<int>(decimals.size()) > digits && decimals.back() == '0')
        decimals.pop_back();
    std::string text = (negative ? "-" : "") + std::to_string(magnitude / per_unit);
    return decimals.empty() ? text : text + "." + decimals;
}

} // namespace pelt
