// SPDX-License-Identifier: MIT
// What people write for lengths, percentages, money, numbers and yes or no, read exactly. Used for
// files and for options alike.
#pragma once

#include "model/length.hpp"
#include "model/money.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace pelt::read {

/// Why a text was refused, to be put after the name of its key or option: "'010' is not a length:
/// a number does not begin with 0", "write 10".
struct Refusal {
    std::string what;
    std::string remedy;
};

/// A value, or why there is none.
template <class T>
struct Parsed {
    std::optional<T> value;
    Refusal refusal;

    Parsed(T made) : value(std::move(made)) {}
    Parsed(Refusal why) : refusal(std::move(why)) {}
};

/// A length and the unit in which it was written; feet and inches count as inches.
struct WrittenLength {
    Length length;
    Unit unit = Unit::mm;
};

/// `25`, `25 mm`, `2.5 ft`, `3/8 in`, `23 1/2 in`, `5 ft 3 1/2 in`, `5' 3"`; a number without a
/// unit is in `bare`. Exact: what cannot be kept to the picometre is refused, and so is what other
/// programs read in different ways (010, 1e3, 0x1F, 1,5).
Parsed<WrittenLength> parse_length(std::string_view text, Unit bare);

/// `12 %`, `12.5%`: the sign is needed.
Parsed<double> parse_percent(std::string_view text);

/// Money and the number of decimals that were written.
struct WrittenMoney {
    Money amount;
    int decimals = 0;
};

/// `14.20`: up to six decimals, no sign of a currency.
Parsed<WrittenMoney> parse_money(std::string_view text);

/// A plain decimal number: `12`, `12.5`.
Parsed<double> parse_number(std::string_view text);

/// A whole number: `4`.
Parsed<std::int64_t> parse_count(std::string_view text);

/// `yes` or `no`.
Parsed<bool> parse_yes_no(std::string_view text);

/// The user's text in single quotes, cut when it is long.
std::string quoted(std::string_view text);

} // namespace pelt::read
