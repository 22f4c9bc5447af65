// SPDX-License-Identifier: MIT
#include "read/currency.hpp"

#include <algorithm>
#include <array>

namespace pelt::read {

int minor_digits(std::string_view currency) {
    constexpr std::array<std::string_view, 15> whole{"BIF", "CLP", "DJF", "GNF", "ISK",
                                                     "JPY", "KMF", "KRW", "PYG", "RWF",
                                                     "UGX", "VND", "VUV", "XAF", "XOF"};
    constexpr std::array<std::string_view, 7> thousandths{"BHD", "IQD", "JOD", "KWD",
                                                          "LYD", "OMR", "TND"};
    if (std::find(whole.begin(), whole.end(), currency) != whole.end())
        return 0;
    return std::find(thousandths.begin(), thousandths.end(), currency) != thousandths.end() ? 3 : 2;
}

} // namespace pelt::read
