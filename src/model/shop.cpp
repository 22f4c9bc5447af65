// SPDX-License-Identifier: MIT
#include "model/shop.hpp"

namespace pelt {

Money Share::of(Money amount) const {
    constexpr Int128 whole = 1'000'000;
    const Int128 product = Int128{amount.micros()} * millionths;
    const bool below = product < 0;
    const Int128 rounded = ((below ? -product : product) + whole / 2) / whole;
    return Money::from_micros(static_cast<std::int64_t>(below ? -rounded : rounded));
}

std::string_view name_of(TaxOn on) {
    switch (on) {
    case TaxOn::all:
        return "all";
    case TaxOn::film:
        return "film";
    case TaxOn::labor:
        return "labor";
    }
    return "all";
}

} // namespace pelt
