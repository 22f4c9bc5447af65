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

std::vector<Int128> divided_to_add_up(const std::vector<Int128>& parts, Int128 divisor,
                                      Int128 sum) {
    std::vector<Int128> quotients;
    std::vector<std::size_t> by_loss;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        quotients.push_back(divided_down(parts[i], divisor));
        by_loss.push_back(i);
        sum -= quotients.back();
    }
    std::stable_sort(by_loss.begin(), by_loss.end(), [&](std::size_t a, std::size_t b) {
        return parts[a] - quotients[a] * divisor > parts[b] - quotients[b] * divisor;
    });
    for (std::size_t i = 0; i < by_loss.size() && sum > 0; ++i, --sum)
        ++quotients[by_loss[i]];
    return quotients;
}

} // namespace pelt::report
