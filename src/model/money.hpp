// SPDX-License-Identifier: MIT
// Decimal money: never binary floating point.
#pragma once

#include <cstdint>
#include <string>

namespace pelt {

/// An amount of money: a whole number of 10^-6 of the currency's unit.
class Money {
public:
    static constexpr std::int64_t per_unit = 1'000'000;

    constexpr Money() = default;
    static constexpr Money from_micros(std::int64_t micros) { return Money{micros}; }
    constexpr std::int64_t micros() const { return micros_; }

    friend constexpr auto operator<=>(Money, Money) = default;
    friend constexpr Money operator+(Money a, Money b) { return Money{a.micros_ + b.micros_}; }
    friend constexpr Money operator-(Money a, Money b) { return Money{a.micros_ - b.micros_}; }
    friend constexpr Money operator*(std::int64_t n, Money a) { return Money{n * a.micros_}; }

private:
    constexpr explicit Money(std::int64_t micros) : micros_(micros) {}
    std::int64_t micros_ = 0;
};

/// `digits` decimals at least, more where the amount has them: 14.2 with 2 digits is "14.20".
std::string to_string(Money amount, int digits);

} // namespace pelt
