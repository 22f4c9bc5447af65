// SPDX-License-Identifier: MIT
// Days and durations as people write them. Inside read/ only.
#pragma once

#include "model/calendar.hpp"
#include "read/fields.hpp"
#include "read/quantities.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::read {

/// `8 h`, `90 min`, `1.5 h`, `1 h 30 min`: whole minutes, rounded up.
Parsed<std::int64_t> parse_duration(std::string_view text);

/// `2026-12-24`.
Parsed<Day> parse_day(std::string_view text);

/// The value of a key, read as its kind says. Nothing where the key is absent or wrong; what is
/// wrong has been told then.
std::optional<std::int64_t> minutes_of(const Fields& fields, const Key& key, Context& context);
std::map<std::string, std::int64_t> durations_of(const Fields& fields, const Key& key,
                                                 Context& context);
std::optional<Day> day_of(const Fields& fields, const Key& key, Context& context);
std::vector<DaySpan> days_of(const Fields& fields, const Key& key, Context& context);
/// The places of the chosen words among choices_of(key).
std::vector<std::size_t> words_of(const Fields& fields, const Key& key, Context& context);

} // namespace pelt::read
