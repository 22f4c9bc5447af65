// SPDX-License-Identifier: MIT
#include "read/currency.hpp"

#include <algorithm>

namespace pelt::read {
namespace {

constexpr std::string_view without_decimals =
    "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF";
constexpr std::string_view with_three = "BHD IQD JOD KWD LYD OMR TND";

} // namespace

std::optional<int> usual_decimals(std::string_view currency) {
    const bool capitals =
        std::all_of(currency.begin(), currency.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
    if (currency.size() != 3 || !capitals)
        return std::nullopt;
    if (without_decimals.find(currency) != std::string_view::npos)
        return 0;
    return with_three.find(currency) != std::string_view::npos ? 3 : 2;
}

} // namespace pelt::read
