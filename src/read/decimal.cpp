// SPDX-License-Identifier: MIT
#include "read/decimal.hpp"

#include "model/utf8.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <limits>

namespace pelt::read {
namespace {

constexpr int most_digits = 18;

std::string lower(std::string_view text) {
    std::string out(text);
    for (char& c : out)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return out;
}

std::string_view without_sign(std::string_view text) {
    return !text.empty() && (text.front() == '-' || text.front() == '+') ? text.substr(1) : text;
}

bool is_not_a_number(std::string_view text) {
    constexpr std::array<std::string_view, 6> names{"nan",  ".nan",     "inf",
                                                    ".inf", "infinity", "infinite"};
    const std::string word = lower(without_sign(text));
    return std::find(names.begin(), names.end(), word) != names.end();
}

bool is_hexadecimal(std::string_view text) {
    const std::string word = lower(without_sign(text));
    return word.size() > 2 && word[0] == '0' && (word[1] == 'x' || word[1] == 'o') &&
           std::all_of(word.begin() + 2, word.end(),
                       [](char c) { return is_digit(c) || (c >= 'a' && c <= 'f'); });
}

std::size_t digits_from(std::string_view text, std::size_t at) {
    std::size_t end = at;
    while (end < text.size() && is_digit(text[end]))
        ++end;
    return end - at;
}

/// Where a digit is followed by `mark` and by `least` digits or more.
std::optional<std::size_t> between_digits(std::string_view text, char mark, std::size_t least) {
    for (std::size_t at = text.find(mark); at != std::string_view::npos;
         at = text.find(mark, at + 1))
        if (at > 0 && is_digit(text[at - 1]) && digits_from(text, at + 1) >= least)
            return at;
    return std::nullopt;
}

bool has_exponent(std::string_view text) {
    for (std::size_t i = 1; i + 1 < text.size(); ++i)
        if ((text[i] == 'e' || text[i] == 'E') && (is_digit(text[i - 1]) || text[i - 1] == '.') &&
            (is_digit(text[i + 1]) || text[i + 1] == '-' || text[i + 1] == '+'))
            return true;
    return false;
}

std::string without(std::string_view text, char mark) {
    std::string out(text);
    out.erase(std::remove(out.begin(), out.end(), mark), out.end());
    return out;
}

/// A comma may have been meant as a decimal point or as a mark of thousands.
std::string comma_remedy(std::string_view text, std::size_t comma) {
    std::string with_point(text);
    with_point[comma] = '.';
    if (text.find(',', comma + 1) != std::string_view::npos ||
        text.find('.') != std::string_view::npos)
        return "write " + without(text, ',');
    if (digits_from(text, comma + 1) == 3)
        return "write " + without(text, ',') + " or " + with_point;
    return "write " + with_point;
}

std::string without_leading_zeros(std::string_view number) {
    while (number.size() > 1 && number[0] == '0' && is_digit(number[1]))
        number.remove_prefix(1);
    return std::string(number);
}

} // namespace

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

void skip_blanks(std::string_view& rest) {
    while (!rest.empty() && rest.front() == ' ')
        rest.remove_prefix(1);
}

std::string_view trimmed(std::string_view text) {
    skip_blanks(text);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    return text;
}

std::int64_t power_of_ten(int exponent) {
    std::int64_t power = 1;
    for (int i = 0; i < exponent; ++i)
        power *= 10;
    return power;
}

double Decimal::value() const {
    const std::string text = std::to_string(units) + "e-" + std::to_string(decimals);
    double out = 0;
    std::from_chars(text.data(), text.data() + text.size(), out);
    return out;
}

std::optional<std::int64_t> Decimal::times(Int128 factor) const {
    const Int128 product = units * factor;
    const Int128 power = power_of_ten(decimals);
    const Int128 limit = std::numeric_limits<std::int64_t>::max();
    if (product % power != 0 || product / power > limit || product / power < -limit)
        return std::nullopt;
    return static_cast<std::int64_t>(product / power);
}

std::string quoted(std::string_view text) {
    constexpr std::size_t most = 40;
    const std::u32string all = code_points(text);
    std::string out = "'";
    for (std::size_t i = 0; i < std::min(all.size(), most); ++i)
        out += utf8(all[i]);
    return out + (all.size() > most ? "...'" : "'");
}

Refusal refusal(std::string_view text, std::string_view kind, const std::string& why,
                std::string remedy) {
    return {quoted(text) + " is not " + std::string(kind) + (why.empty() ? "" : ": " + why),
            std::move(remedy)};
}

std::optional<Refusal> usual_slip(std::string_view text, std::string_view kind) {
    if (text.empty())
        return Refusal{"is empty", "give " + std::string(kind)};
    if (is_not_a_number(text))
        return refusal(text, kind, "it is not a finite number", "write the number in digits");
    if (is_hexadecimal(text))
        return refusal(text, kind, "only decimal digits are read", "write it with digits 0 to 9");
    if (const auto comma = between_digits(text, ',', 1))
        return refusal(text, kind, "decimals stand after a point, and thousands have no mark",
                       comma_remedy(text, *comma));
    for (const char mark : {'_', '\''})
        if (between_digits(text, mark, 3))
            return refusal(text, kind, "thousands have no mark", "write " + without(text, mark));
    if (has_exponent(text))
        return refusal(text, kind, "powers of ten are not read", "write the number out in full");
    if (text.find("\u2212") != std::string_view::npos)
        return refusal(text, kind, "its minus sign is not the one on the keyboard", "write -");
    return std::nullopt;
}

Parsed<Decimal> take_decimal(std::string_view& rest, std::string_view text, std::string_view kind) {
    std::size_t whole = 0;
    while (whole < rest.size() && is_digit(rest[whole]))
        ++whole;
    std::size_t end = whole;
    if (end < rest.size() && rest[end] == '.')
        for (++end; end < rest.size() && is_digit(rest[end]);)
            ++end;
    const std::string_view number = rest.substr(0, end);
    if (number.empty() || number == ".")
        return refusal(text, kind, "", "");
    if (whole > 1 && number.front() == '0')
        return refusal(text, kind, "a number does not begin with 0",
                       "write " + without_leading_zeros(number));
    if (number.back() == '.')
        return refusal(text, kind, "digits are missing after the point",
                       "write " + std::string(number.substr(0, whole)));
    if (number.size() > most_digits)
        return refusal(text, kind, "it has too many digits",
                       "write " + std::to_string(most_digits - 1) + " at most");
    Decimal out;
    out.decimals = end > whole ? static_cast<int>(end - whole - 1) : 0;
    for (const char c : number)
        if (c != '.')
            out.units = out.units * 10 + (c - '0');
    rest.remove_prefix(end);
    return out;
}

Parsed<Decimal> parse_decimal(std::string_view text, std::string_view kind) {
    if (auto slip = usual_slip(text, kind))
        return *slip;
    std::string_view rest = without_sign(text);
    Parsed<Decimal> number = take_decimal(rest, text, kind);
    const std::string example = "write digits only, such as 12 or 12.5";
    if (!number.value && number.refusal.remedy.empty())
        number.refusal.remedy = example;
    if (!number.value)
        return number;
    if (!rest.empty())
        return refusal(text, kind, "", example);
    if (text.front() == '-')
        number.value->units = -number.value->units;
    return number;
}

} // namespace pelt::read
