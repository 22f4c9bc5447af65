// SPDX-License-Identifier: MIT
// A text of rows and cells as spreadsheets export it (RFC 4180, with any separator). Inside read/
// only.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::read {

using Row = std::vector<std::string>;

/// A cell, counted from 1.
struct CellAt {
    int row = 0;
    int column = 0;
};

struct Cells {
    std::vector<Row> rows; ///< blank lines are rows without cells
    std::optional<CellAt> broken = std::nullopt; ///< where the quoting cannot be followed any more
    bool unclosed = false;                       ///< there: a quote is not closed
};

/// Blanks around a cell without quotes are dropped; a line ends in LF, CRLF or CR.
Cells cells_of(std::string_view text, char separator);

/// True for names of files that hold a table: those that end in .csv.
bool is_table_name(std::string_view file);

} // namespace pelt::read
