// SPDX-License-Identifier: MIT
#include "model/calendar.hpp"

#include <algorithm>
#include <cstdio>

namespace pelt {
namespace {

using std::chrono::days;
using std::chrono::weekday;
using std::chrono::year_month_day;

constexpr int earliest_year = 1970;
constexpr int latest_year = 2999;
constexpr int days_looked_through = 3'660;

bool are_digits(const std::string& text, std::size_t from, std::size_t count) {
    return std::all_of(text.begin() + static_cast<std::ptrdiff_t>(from),
                       text.begin() + static_cast<std::ptrdiff_t>(from + count),
                       [](char c) { return c >= '0' && c <= '9'; });
}

} // namespace

std::string to_string(Day day) {
    const year_month_day date(day);
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text.data();
}

std::optional<Day> day_in(const std::string& text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-' || !are_digits(text, 0, 4) ||
        !are_digits(text, 5, 2) || !are_digits(text, 8, 2))
        return std::nullopt;
    const int year = std::stoi(text.substr(0, 4));
    const year_month_day date(
        std::chrono::year(year),
        std::chrono::month(static_cast<unsigned>(std::stoi(text.substr(5, 2)))),
        std::chrono::day(static_cast<unsigned>(std::stoi(text.substr(8, 2)))));
    if (!date.ok() || year < earliest_year || year > latest_year)
        return std::nullopt;
    return Day(date);
}

bool WorkingWeek::works_on(Day day) const {
    return works[weekday(day).c_encoding()] &&
           std::none_of(closed.begin(), closed.end(),
                        [&](const DaySpan& span) { return span.first <= day && day <= span.last; });
}

std::optional<Day> WorkingWeek::first_from(Day day) const {
    for (int i = 0; i < days_looked_through; ++i, day += days(1))
        if (works_on(day))
            return day;
    return std::nullopt;
}

} // namespace pelt
