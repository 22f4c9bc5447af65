// SPDX-License-Identifier: MIT
#include "cli/values.hpp"

#include "cli/nearest.hpp"
#include "model/utf8.hpp"
#include "read/quantities.hpp"
#include "read/suggest.hpp"

#include <algorithm>
#include <charconv>

namespace pelt::cli {
namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

std::string_view without_blanks(std::string_view text) {
    while (!text.empty() && text.front() == ' ')
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    return text;
}

std::vector<std::string> words_that_work(const OptionRow& option) {
    std::vector<std::string> words;
    for (const Choice& choice : option.choices)
        if (choice.works)
            words.emplace_back(choice.word);
    return words;
}

std::optional<Complaint> about_choice(const OptionRow& option, const std::string& value) {
    const std::vector<std::string> words = words_that_work(option);
    if (std::find(words.begin(), words.end(), value) != words.end())
        return std::nullopt;
    const bool comes_later = std::any_of(option.choices.begin(), option.choices.end(),
                                         [&](const Choice& c) { return c.word == value; });
    const std::string what = spelled(option) + " " + in_quotes(value) +
                             (comes_later ? " is not known yet" : " is not known");
    const std::string remedy = "it can be " + read::listed(words);
    const std::string hint = comes_later ? "" : did_you_mean(nearest(value, words));
    return Complaint{what, hint.empty() ? remedy : hint + " " + remedy};
}

std::optional<Complaint> about_count(const OptionRow& option, const std::string& value) {
    if (whole_number(value, option.least, option.most))
        return std::nullopt;
    return Complaint{spelled(option) + " " + in_quotes(value) + " is not a whole number from " +
                         std::to_string(option.least) + " to " + std::to_string(option.most),
                     "write it in plain digits"};
}

/// A bound in millimetres, as people say it.
std::string bound(std::int64_t mm) {
    if (mm > 0 && mm % 1'000'000 == 0)
        return std::to_string(mm / 1'000'000) + " km";
    return mm % 1000 == 0 && mm > 0 ? std::to_string(mm / 1000) + " m" : std::to_string(mm) + " mm";
}

std::optional<Complaint> about_length(const OptionRow& option, const std::string& value) {
    const auto parsed = read::parse_length(value, Unit::mm);
    if (!parsed.value)
        return Complaint{spelled(option) + " " + parsed.refusal.what, parsed.refusal.remedy};
    const Length length = parsed.value->length;
    if (length >= Length::from_mm(option.least) && length <= Length::from_mm(option.most))
        return std::nullopt;
    return Complaint{spelled(option) + " " + in_quotes(value) + " is not from " +
                         bound(option.least) + " to " + bound(option.most),
                     "a number without a unit is in millimeters"};
}

constexpr std::string_view dots = "..";

/// Plain characters, on so many columns.
bool prints_within(int columns, const std::string& text) {
    const std::u32string letters = code_points(text);
    return display_width(text) <= columns &&
           std::none_of(letters.begin(), letters.end(),
                        [](char32_t c) { return is_control(c) || c == 0xFFFD; });
}

/// Dates are written in many ways, and this one is only printed.
std::optional<Complaint> about_date(const OptionRow& option, const std::string& value) {
    constexpr int longest = 30;
    if (std::any_of(value.begin(), value.end(), is_digit) && prints_within(longest, value))
        return std::nullopt;
    return Complaint{spelled(option) + " " + in_quotes(value) + " is not a date to print",
                     "write it as it shall stand on the sheet, such as 2026-11-27"};
}

std::optional<Complaint> about_filling(const OptionRow& option, const std::string& value) {
    constexpr int longest = 60;
    const auto filling = filling_in(value);
    if (!filling)
        return Complaint{spelled(option) + " " + in_quotes(value) +
                             " does not say what to write where",
                         "write a word, an equals sign and the text, such as job=1042"};
    if (prints_within(longest, value))
        return std::nullopt;
    return Complaint{spelled(option) + " " + in_quotes(value) + " does not fit on a line",
                     "write at most " + std::to_string(longest) + " plain characters"};
}

std::optional<Complaint> about_span(const OptionRow& option, const std::string& value) {
    const std::size_t at = value.find(dots);
    if (at == std::string::npos)
        return Complaint{spelled(option) + " " + in_quotes(value) +
                             " is not a stretch of a roll: two dots are missing",
                         "write where it begins and ends, such as 3.2m..3.4m"};
    for (const std::string& end : {value.substr(0, at), value.substr(at + dots.size())})
        if (const auto complaint = about_length(option, end))
            return complaint;
    if (!span_in(value))
        return Complaint{spelled(option) + " " + in_quotes(value) + " ends before it begins",
                         "write the smaller length first"};
    return std::nullopt;
}

std::optional<Complaint> about_sizes(const OptionRow& option, const std::string& value) {
    const auto parts = names_in(value);
    if (!parts || parts->size() != 3)
        return Complaint{spelled(option) + " " + in_quotes(value) + " is not three lengths",
                         "write length, width and height over all, such as 4710,1830,1480"};
    for (const std::string& part : *parts)
        if (const auto parsed = read::parse_length(part, Unit::mm); !parsed.value)
            return Complaint{spelled(option) + " " + parsed.refusal.what, parsed.refusal.remedy};
    return std::nullopt;
}

std::optional<Complaint> about_margin(const OptionRow& option, const std::string& value) {
    const std::size_t comma = value.find(',');
    for (const std::string& length :
         {value.substr(0, comma), comma == std::string::npos ? "0" : value.substr(comma + 1)})
        if (const auto complaint = about_length(option, length))
            return complaint;
    if (!margin_in(value))
        return Complaint{spelled(option) + " " + in_quotes(value) +
                             " has a least margin above what is wanted",
                         "write what is wanted first, then the least"};
    return std::nullopt;
}

std::optional<Complaint> about_percent(const OptionRow& option, const std::string& value) {
    const auto parsed = read::parse_percent(value);
    if (!parsed.value)
        return Complaint{spelled(option) + " " + parsed.refusal.what, parsed.refusal.remedy};
    if (chance_percent(value))
        return std::nullopt;
    return Complaint{spelled(option) + " " + in_quotes(value) +
                         " is not above 0 % and up to 99.99 %",
                     "no order is sure to suffice; 95 % is a common choice"};
}

} // namespace

std::optional<double> chance_percent(std::string_view text) {
    constexpr double most = 99.99;
    const auto parsed = read::parse_percent(text);
    return parsed.value && *parsed.value > 0 && *parsed.value <= most ? parsed.value : std::nullopt;
}

std::optional<std::pair<std::string, std::string>> filling_in(std::string_view text) {
    const std::size_t at = text.find('=');
    if (at == std::string_view::npos)
        return std::nullopt;
    const std::string_view word = without_blanks(text.substr(0, at));
    const std::string_view words = without_blanks(text.substr(at + 1));
    if (word.empty() || words.empty())
        return std::nullopt;
    return std::pair(std::string(word), std::string(words));
}

std::optional<std::pair<Length, Length>> span_in(std::string_view text) {
    const std::size_t at = text.find(dots);
    if (at == std::string_view::npos)
        return std::nullopt;
    const auto from = read::parse_length(text.substr(0, at), Unit::mm);
    const auto to = read::parse_length(text.substr(at + dots.size()), Unit::mm);
    if (!from.value || !to.value || to.value->length <= from.value->length)
        return std::nullopt;
    return std::pair{from.value->length, to.value->length};
}

std::optional<MarginWish> margin_in(std::string_view text) {
    const std::size_t comma = text.find(',');
    const auto want = read::parse_length(text.substr(0, comma), Unit::mm);
    if (!want.value)
        return std::nullopt;
    MarginWish wish{want.value->length.ceil_um(), std::nullopt};
    if (comma == std::string_view::npos)
        return wish;
    const auto least = read::parse_length(without_blanks(text.substr(comma + 1)), Unit::mm);
    if (!least.value || least.value->length > want.value->length)
        return std::nullopt;
    wish.least = least.value->length.ceil_um();
    return wish;
}

std::optional<std::int64_t> whole_number(std::string_view text, std::int64_t least,
                                         std::int64_t most) {
    if (text.empty() || !std::all_of(text.begin(), text.end(), is_digit) ||
        (text.size() > 1 && text.front() == '0'))
        return std::nullopt;
    std::int64_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || value < least || value > most)
        return std::nullopt;
    return value;
}

std::optional<double> seconds(std::string_view text) {
    constexpr double day = 86'400;
    if (text.empty() || !is_digit(text.front()) ||
        !std::all_of(text.begin(), text.end(), [](char c) { return is_digit(c) || c == '.'; }))
        return std::nullopt;
    double value = 0;
    const auto [end, error] =
        std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    if (error != std::errc{} || end != text.data() + text.size() || !(value > 0) || value > day)
        return std::nullopt;
    return value;
}

std::optional<std::vector<std::string>> names_in(std::string_view text) {
    std::vector<std::string> names;
    while (true) {
        const std::size_t comma = text.find(',');
        const std::string_view name = without_blanks(text.substr(0, comma));
        if (name.empty())
            return std::nullopt;
        names.emplace_back(name);
        if (comma == std::string_view::npos)
            return names;
        text.remove_prefix(comma + 1);
    }
}

std::optional<Complaint> complaint_about(const OptionRow& option, const std::string& value) {
    if (value.empty())
        return Complaint{spelled(option) + " has no value",
                         "write '" + spelled_with_value(option) + "'"};
    switch (option.kind) {
    case Kind::choice:
        return about_choice(option, value);
    case Kind::count:
        return about_count(option, value);
    case Kind::seconds:
        if (!seconds(value))
            return Complaint{spelled(option) + " " + in_quotes(value) +
                                 " is not a number of seconds above 0 and up to 86400",
                             "write it in plain digits, such as 2.5"};
        return std::nullopt;
    case Kind::names:
        if (!names_in(value))
            return Complaint{spelled(option) + " " + in_quotes(value) + " has an empty name in it",
                             "write names with one comma between them"};
        return std::nullopt;
    case Kind::length:
        return about_length(option, value);
    case Kind::span:
        return about_span(option, value);
    case Kind::sizes:
        return about_sizes(option, value);
    case Kind::margin:
        return about_margin(option, value);
    case Kind::percent:
        return about_percent(option, value);
    case Kind::date:
        return about_date(option, value);
    case Kind::filling:
        return about_filling(option, value);
    case Kind::flag:
    case Kind::file:
        return std::nullopt;
    }
    return std::nullopt;
}

std::string in_quotes(std::string_view text) {
    return printable(read::quoted(text));
}

std::string file_in_quotes(std::string_view path) {
    return "'" + printable(path) + "'";
}

} // namespace pelt::cli
