// SPDX-License-Identifier: MIT
// Where things stand in a table of panels: its separator, the row of its headings, its columns.
// Inside read/ only.
#pragma once

#include "read/table/cells.hpp"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace pelt::read {

/// What a column holds, and the key of a panel that it is in a YAML file.
enum class ColumnOf { panel, text, measure, width, height, rise, tuck };
struct Column {
    std::string_view heading;
    ColumnOf of;
    std::string_view key; ///< of the panel, of its crown or of its edges
};

/// All headings that a table may have.
std::span<const Column> columns();
const Column* column_named(std::string_view heading);

struct Layout {
    Cells cells;
    char separator = ',';
    std::size_t heading_row = 0; ///< index into the rows; their number where there is none
    bool has_headings() const { return heading_row < cells.rows.size(); }
};

/// The separator is the first of tab, semicolon and comma that gives a cell with the heading that
/// every such table has; without one it is that which gives the most cells.
Layout layout_of(std::string_view text, std::string_view heading = "panel");

/// The text without a byte order mark.
std::string_view without_mark(std::string_view text);

/// A heading as it is compared: without blanks around it, in lower case.
std::string plain_heading(std::string_view cell);

} // namespace pelt::read
