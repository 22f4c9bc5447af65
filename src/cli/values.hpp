// SPDX-License-Identifier: MIT
// The values of options, from text. Nothing is left to a library: no hex, no octal, no nan, no
// sign, no overflow.
#pragma once

#include "cli/options.hpp"
#include "model/film.hpp"
#include "model/length.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace pelt::cli {

/// Decimal digits only, without leading zeros, from `least` to `most`.
std::optional<std::int64_t> whole_number(std::string_view text, std::int64_t least,
                                         std::int64_t most);

/// Digits with at most one decimal point between or after them; above 0, at most a day.
std::optional<double> seconds(std::string_view text);

/// The names between commas, without the blanks around them. None where a name is empty.
std::optional<std::vector<std::string>> names_in(std::string_view text);

/// FROM..TO; none where it is no such thing, or ends where it begins.
std::optional<std::pair<Length, Length>> span_in(std::string_view text);

/// A percentage with its sign, above 0 and at most 99.99: what can be sure at all.
std::optional<double> chance_percent(std::string_view text);

/// WORD=TEXT, without the blanks around either. None where one of the two is empty.
std::optional<std::pair<std::string, std::string>> filling_in(std::string_view text);

/// What is wrong with the value of an option, or none.
struct Complaint {
    std::string what;
    std::string remedy;
};
/// "25", "25 mm,10 mm": what is wanted and the least; none: not that, or the least is more.
std::optional<MarginWish> margin_in(std::string_view text);

std::optional<Complaint> complaint_about(const OptionRow& option, const std::string& value);

/// What the user typed, between single quotes: cut when it is long, and with nothing that a
/// terminal would obey.
std::string in_quotes(std::string_view text);
/// The same for a path, which is never cut.
std::string file_in_quotes(std::string_view path);

} // namespace pelt::cli
