// SPDX-License-Identifier: MIT
#include "report/decimal.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::report {

std::string decimal(Int128 value, int places, int least) {
    const bool negative = value < 0;
    std::string digits;
    for (Int128 rest = negative ? -value : value; rest != 0; rest /= 10)
        digits.push_back(static_cast<char>('0' + static_cast<int>(rest % 10)));
    while (static_cast<int>(digits.size()) <= places)
        digits.push_back('0');
    std::reverse(digits.begin(), digits.end());
    const std::size_t whole = digits.size() - static_cast<std::size_t>(places);
    std::string decimals = digits.substr(whole);
    while (static_cast<int>(decimals.size()) > least && decimals.back() == '0')
        decimals.pop_back();
    const std::string text = (negative ? "-" : "") + digits.substr(0, whole);
    return decimals.empty() ? text : text + "." + decimals;
}

std::int64_t thousandths(double value) {
    return std::llround(value * 1000);
}

Int128 divided_down(Int128 value, Int128 divisor) {
    const Int128 towards_zero = value / divisor;
    return value < 0 && towards_zero * divisor != value ? towards_zero - 1 : towards_zero;
}

Int128 divided_up(Int128 value, Int128 divisor) {
    return -divided_down(-value, divisor);
}

Int128 divided_nearest(Int128 value, Int128 divisor) {
    const Int128 magnitude = value < 0 ? -value : value;
    const Int128 rounded = (2 * magnitude + divisor) / (2 * divisor);
    return value < 0 ? -rounded : rounded;
}

} // namespace pelt::report
