// SPDX-License-Identifier: MIT
// Days of the calendar and working weeks. No time of day here knows a time zone: a day is a date,
// and nobody works through the night in which clocks are changed.
#pragma once

#include <array>
#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace pelt {

using Day = std::chrono::sys_days;

/// "2026-12-24" (ISO 8601).
std::string to_string(Day day);

/// From a text as `to_string` writes it; none where there is no such day, or it lies outside the
/// years 1970 to 2999.
std::optional<Day> day_in(const std::string& text);

/// From the first day to the last, both included.
struct DaySpan {
    Day first;
    Day last;
    friend bool operator==(const DaySpan&, const DaySpan&) = default;
};

/// When a shop works.
struct WorkingWeek {
    int minutes_a_day = 8 * 60;                                            ///< 1 … 1440
    std::array<bool, 7> works{false, true, true, true, true, true, false}; ///< Sunday first
    std::vector<DaySpan> closed;

    bool works_on(Day day) const;
    /// The first working day that is not before `day`; none within ten years of it.
    std::optional<Day> first_from(Day day) const;
};

/// "mon", "tue" …, Sunday first.
inline constexpr std::array<const char*, 7> day_words{"sun", "mon", "tue", "wed",
                                                      "thu", "fri", "sat"};

} // namespace pelt
