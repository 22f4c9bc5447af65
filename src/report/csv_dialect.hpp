// SPDX-License-Identifier: MIT
// CSV as spreadsheets of other countries and strict readers want it.
#pragma once

#include <string>
#include <string_view>

namespace pelt::report {

enum class CsvDialect {
    comma,     ///< commas, decimal points, LF: what to_csv gives
    semicolon, ///< semicolons, decimal commas, LF
    rfc4180,   ///< commas, decimal points, CR LF (RFC 4180, section 2, item 1)
};

/// Lines of CSV as to_csv gives them, in another dialect. Of the cells without quotes, those that
/// are decimal numbers get a comma; csv_text quotes texts that look like one, so that they stay.
std::string in_dialect(std::string_view csv, CsvDialect dialect);

} // namespace pelt::report
