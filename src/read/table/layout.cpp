// SPDX-License-Identifier: MIT
#include "read/table/layout.hpp"

#include "read/decimal.hpp"

#include <algorithm>
#include <array>
#include <cctype>

namespace pelt::read {
namespace {

constexpr std::array<Column, 19> all_columns{{
    {"panel", ColumnOf::panel, ""},
    {"sides", ColumnOf::text, "sides"},
    {"count", ColumnOf::measure, "count"},
    {"width", ColumnOf::width, "size"},
    {"height", ColumnOf::height, "size"},
    {"measured", ColumnOf::text, "measured"},
    {"rise over width", ColumnOf::rise, "wide"},
    {"rise over height", ColumnOf::rise, "high"},
    {"forward", ColumnOf::text, "forward"},
    {"tuck", ColumnOf::tuck, "all"},
    {"tuck top", ColumnOf::tuck, "top"},
    {"tuck bottom", ColumnOf::tuck, "bottom"},
    {"tuck left", ColumnOf::tuck, "left"},
    {"tuck right", ColumnOf::tuck, "right"},
    {"direction", ColumnOf::text, "direction"},
    {"group", ColumnOf::text, "group"},
    {"extra", ColumnOf::text, "extra"},
    {"is", ColumnOf::text, "is"},
    {"redo", ColumnOf::measure, "redo"},
}};

constexpr std::array<char, 3> separators{'\t', ';', ','};

std::size_t row_of_headings(const Cells& cells, std::string_view heading) {
    const auto row = std::find_if(cells.rows.begin(), cells.rows.end(), [&](const Row& cells_of) {
        return std::any_of(cells_of.begin(), cells_of.end(),
                           [&](const std::string& cell) { return plain_heading(cell) == heading; });
    });
    return static_cast<std::size_t>(row - cells.rows.begin());
}

std::size_t count_of(const Cells& cells) {
    std::size_t count = 0;
    for (const Row& row : cells.rows)
        count += row.size();
    return count;
}

} // namespace

std::span<const Column> columns() {
    return all_columns;
}

const Column* column_named(std::string_view heading) {
    const std::string plain = plain_heading(heading);
    const auto found = std::find_if(all_columns.begin(), all_columns.end(),
                                    [&](const Column& column) { return column.heading == plain; });
    return found == all_columns.end() ? nullptr : &*found;
}

std::string_view without_mark(std::string_view text) {
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    if (text.starts_with(mark))
        text.remove_prefix(mark.size());
    return text;
}

std::string plain_heading(std::string_view cell) {
    std::string plain(trimmed(cell));
    for (char& c : plain)
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return plain;
}

Layout layout_of(std::string_view text, std::string_view heading) {
    Layout most;
    for (const char separator : separators) {
        Layout layout{cells_of(without_mark(text), separator), separator, 0};
        layout.heading_row = row_of_headings(layout.cells, heading);
        if (layout.has_headings())
            return layout;
        if (most.cells.rows.empty() || count_of(layout.cells) > count_of(most.cells))
            most = std::move(layout);
    }
    return most;
}

} // namespace pelt::read
