// SPDX-License-Identifier: MIT
#include "read/times.hpp"

#include "read/decimal.hpp"
#include "read/suggest.hpp"

#include <algorithm>

namespace pelt::read {
namespace {

constexpr std::int64_t minutes_an_hour = 60;

/// Takes a number and its unit off the front; the minutes, or why not.
Parsed<std::int64_t> take_part(std::string_view& rest, std::string_view text) {
    const std::string_view kind = "a duration";
    skip_blanks(rest);
    const Parsed<Decimal> number = take_decimal(rest, text, kind);
    if (!number.value)
        return number.refusal;
    skip_blanks(rest);
    const std::size_t end =
        std::min(rest.size(), rest.find_first_not_of("abcdefghijklmnopqrstuvwxyz"));
    const std::string_view unit = rest.substr(0, end);
    rest.remove_prefix(end);
    const bool hours = unit == "h";
    if (!hours && unit != "min")
        return refusal(text, kind, unit.empty() ? "its unit is missing" : "its unit is not known",
                       "write hours or minutes, such as 8 h or 90 min");
    // Rounded up to whole minutes: 1.01 h is 61 min.
    const std::int64_t scale = power_of_ten(number.value->decimals);
    const Int128 parts = Int128{number.value->units} * (hours ? minutes_an_hour : 1);
    const Int128 minutes = (parts + scale - 1) / scale;
    if (minutes > 10'000'000)
        return refusal(text, kind, "it is longer than any job", "write hours or minutes");
    return static_cast<std::int64_t>(minutes);
}

std::string spoken(double minutes) {
    const auto whole = static_cast<std::int64_t>(minutes);
    return whole % minutes_an_hour == 0 && whole > 0
               ? std::to_string(whole / minutes_an_hour) + " h"
               : std::to_string(whole) + " min";
}

std::optional<std::int64_t> duration_value(const Node& node, const Key& key, std::string_view label,
                                           const Place& owner, Context& context) {
    const std::string* text = plain_text(node, label, owner, context);
    if (text == nullptr)
        return std::nullopt;
    const auto minutes = told(parse_duration(*text), node, label, context);
    const auto value = static_cast<double>(minutes.value_or(0));
    if (!minutes || (value >= key.low && value <= key.high))
        return minutes;
    context.fault(
        node.place,
        std::string(label) + " " + quoted(*text) + " is " +
            (value < key.low ? "less than " + spoken(key.low) : "more than " + spoken(key.high)),
        "give " + spoken(key.low) + " to " + spoken(key.high));
    return std::nullopt;
}

std::optional<DaySpan> span_value(const Node& node, std::string_view label, const Place& owner,
                                  Context& context) {
    const std::string* text = plain_text(node, label, owner, context);
    if (text == nullptr)
        return std::nullopt;
    const std::size_t dots = text->find("..");
    const auto first =
        told(parse_day(std::string_view(*text).substr(0, dots)), node, label, context);
    if (!first || dots == std::string::npos)
        return first ? std::optional(DaySpan{*first, *first}) : std::nullopt;
    const auto last =
        told(parse_day(std::string_view(*text).substr(dots + 2)), node, label, context);
    if (!last)
        return std::nullopt;
    if (*last < *first) {
        context.fault(node.place,
                      std::string(label) + " " + quoted(*text) + " ends before it begins",
                      "write the first day, two dots, the last day");
        return std::nullopt;
    }
    return DaySpan{*first, *last};
}

/// A list's items; a single value stands for a list of one.
std::vector<const Node*> items_of(const Node& node) {
    if (node.kind != Node::Kind::list)
        return {&node};
    std::vector<const Node*> out;
    for (const Node& item : node.items)
        out.push_back(&item);
    return out;
}

} // namespace

Parsed<std::int64_t> parse_duration(std::string_view text) {
    std::string_view rest = trimmed(text);
    Parsed<std::int64_t> whole = take_part(rest, text);
    skip_blanks(rest);
    if (!whole.value || rest.empty())
        return whole;
    const Parsed<std::int64_t> more = take_part(rest, text);
    skip_blanks(rest);
    if (!more.value || rest.empty())
        return more.value ? Parsed<std::int64_t>(*whole.value + *more.value) : more;
    return refusal(text, "a duration", "something follows it", "write 1 h 30 min");
}

Parsed<Day> parse_day(std::string_view text) {
    if (const auto day = day_in(std::string(trimmed(text))))
        return *day;
    return refusal(text, "a day", "there is no such date",
                   "write year, month and day, such as 2026-12-24");
}

std::optional<std::int64_t> minutes_of(const Fields& fields, const Key& key, Context& context) {
    const Entry* entry = fields.entry(key.name);
    return entry == nullptr ? std::nullopt
                            : duration_value(entry->value, key, key.name, entry->place, context);
}

std::map<std::string, std::int64_t> durations_of(const Fields& fields, const Key& key,
                                                 Context& context) {
    std::map<std::string, std::int64_t> out;
    if (!fields.has(key.name))
        return out;
    if (const std::vector<Entry>* entries = fields.named(key.name))
        for (const Entry& entry : *entries)
            if (const auto minutes =
                    duration_value(entry.value, key, entry.key, entry.place, context))
                out.emplace(entry.key, *minutes);
    return out;
}

std::optional<Day> day_of(const Fields& fields, const Key& key, Context& context) {
    const Entry* entry = fields.entry(key.name);
    const std::string* text =
        entry == nullptr ? nullptr : plain_text(entry->value, key.name, entry->place, context);
    return text == nullptr ? std::nullopt : told(parse_day(*text), entry->value, key.name, context);
}

std::vector<DaySpan> days_of(const Fields& fields, const Key& key, Context& context) {
    std::vector<DaySpan> out;
    const Entry* entry = fields.entry(key.name);
    if (entry == nullptr)
        return out;
    for (const Node* item : items_of(entry->value))
        if (const auto span = span_value(*item, key.name, entry->place, context))
            out.push_back(*span);
    return out;
}

std::vector<std::size_t> words_of(const Fields& fields, const Key& key, Context& context) {
    std::vector<std::size_t> out;
    const Entry* entry = fields.entry(key.name);
    if (entry == nullptr)
        return out;
    const std::vector<std::string_view> words = choices_of(key);
    for (const Node* item : items_of(entry->value)) {
        const std::string* text = plain_text(*item, key.name, entry->place, context);
        if (text == nullptr)
            continue;
        const auto found = std::find(words.begin(), words.end(), *text);
        if (found != words.end())
            out.push_back(static_cast<std::size_t>(found - words.begin()));
        else
            context.fault(item->place,
                          std::string(key.name) + " " + quoted(*text) + " is not known",
                          did_you_mean(*text, {words.begin(), words.end()}, "it is one of"));
    }
    return out;
}

} // namespace pelt::read
