// SPDX-License-Identifier: MIT
#include "read/quantities.hpp"

#include "read/decimal.hpp"

namespace pelt::read {

Parsed<double> parse_percent(std::string_view text) {
    const std::string_view kind = "a percentage";
    const std::string_view all = trimmed(text);
    if (all.empty() || all.back() != '%') {
        const Parsed<Decimal> number = parse_decimal(all, kind);
        if (!number.value)
            return number.refusal;
        return refusal(text, kind, "its sign is missing", "write " + std::string(all) + " %");
    }
    const Parsed<Decimal> number = parse_decimal(trimmed(all.substr(0, all.size() - 1)), kind);
    if (!number.value)
        return number.refusal;
    return number.value->value();
}

Parsed<WrittenMoney> parse_money(std::string_view text) {
    const std::string_view kind = "an amount of money";
    const Parsed<Decimal> number = parse_decimal(trimmed(text), kind);
    if (!number.value) {
        Refusal why = number.refusal;
        if (why.remedy.find("digits only") != std::string::npos)
            why.remedy = "write the number alone, such as 14.20, and name the currency under "
                         "'currency'";
        return why;
    }
    const auto micros = number.value->times(Money::per_unit);
    if (!micros)
        return refusal(text, kind, "it is finer or larger than can be kept exactly",
                       "write six decimals at most");
    return WrittenMoney{Money::from_micros(*micros), number.value->decimals};
}

Parsed<double> parse_number(std::string_view text) {
    const Parsed<Decimal> number = parse_decimal(trimmed(text), "a number");
    if (!number.value)
        return number.refusal;
    return number.value->value();
}

Parsed<std::int64_t> parse_count(std::string_view text) {
    const std::string_view kind = "a whole number";
    const Parsed<Decimal> number = parse_decimal(trimmed(text), kind);
    if (!number.value)
        return number.refusal;
    if (number.value->decimals > 0)
        return refusal(text, kind, "it has decimals", "write digits only, such as 4");
    return number.value->units;
}

Parsed<bool> parse_yes_no(std::string_view text) {
    if (text == "yes")
        return true;
    if (text == "no")
        return false;
    return Refusal{quoted(text) + " is neither yes nor no", "write yes or no"};
}

} // namespace pelt::read
