// SPDX-License-Identifier: MIT
// The parts of the manual that are made from the tables, in mdoc(7).
#pragma once

#include <map>
#include <string>
#include <string_view>

namespace pelt::cli {

/// The text of a template with every `@WORD@` filled in; throws ProgramError for a word that has
/// no filling, and for a filling that the template does not use.
std::string filled(std::string_view text, const std::map<std::string, std::string>& fillings);

/// What pelt.1.in is filled with, but for the date.
std::map<std::string, std::string> manual_fillings();

/// What files and jobs may hold at most.
std::string limit_list();

/// "November 25, 2026" from "2026-11-25".
std::string mdoc_date(std::string_view iso_date);
/// "2026-11-25" from seconds since 1970, UTC.
std::string iso_date(long long seconds_since_1970);

/// Text that mdoc takes as it is: backslashes, the dashes of options and leading dots escaped.
std::string escaped(std::string_view text);
/// The same with every sentence on a line of its own, as mdoc wants it.
std::string sentences(std::string_view text);

} // namespace pelt::cli
