// SPDX-License-Identifier: MIT
// Exact decimal numbers as people write them. Inside read/ only.
#pragma once

#include "model/length.hpp"
#include "read/quantities.hpp"

#include <cstdint>
#include <optional>
#include <string_view>

namespace pelt::read {

/// units × 10^-decimals, as written: 14.20 is 1420 and 2. At most 18 digits.
struct Decimal {
    std::int64_t units = 0;
    int decimals = 0;

    double value() const;
    /// The number times `factor` when that is whole and fits 64 bits.
    std::optional<std::int64_t> times(Int128 factor) const;
};

std::int64_t power_of_ten(int exponent);

/// "'TEXT' is not KIND: WHY", for KIND such as "a length".
Refusal refusal(std::string_view text, std::string_view kind, const std::string& why,
                std::string remedy);

/// Takes an unsigned decimal number off the front of `rest`. `text` is the whole that is read,
/// `kind` what it should be, both for the refusal.
Parsed<Decimal> take_decimal(std::string_view& rest, std::string_view text, std::string_view kind);

/// A whole text that is a decimal number, with or without a sign in front.
Parsed<Decimal> parse_decimal(std::string_view text, std::string_view kind);

bool is_digit(char c);
bool is_letter(char c);
void skip_blanks(std::string_view& rest);
std::string_view trimmed(std::string_view text);

/// The usual slips in writing numbers, told by name: nothing there, decimal commas, not-a-number,
/// hexadecimal, exponents, grouped digits.
std::optional<Refusal> usual_slip(std::string_view text, std::string_view kind);

} // namespace pelt::read
