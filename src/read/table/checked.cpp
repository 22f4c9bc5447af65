// SPDX-License-Identifier: MIT
#include "read/table/checked.hpp"

#include "model/utf8.hpp"
#include "read/decimal.hpp"

#include <algorithm>

namespace pelt::read {
namespace {

bool is_text(std::string_view cell, const Place& place, Context& context) {
    for (std::size_t i = 0; i < cell.size();) {
        const Decoded next = decoded(cell, i);
        if (!next.well_formed) {
            context.fault(place, "this is not UTF-8 text", "export the table in UTF-8");
            return false;
        }
        if (is_control(next.c)) {
            const bool line_end = next.c == '\n' || next.c == '\r';
            context.fault(place,
                          line_end ? "the cell holds a line end"
                                   : "the cell holds a control character",
                          "take it out");
            return false;
        }
        i += next.bytes;
    }
    return true;
}

} // namespace

Place cell_at(const std::shared_ptr<const Source>& source, std::size_t row, std::size_t column) {
    return {source, static_cast<int>(row) + 1, static_cast<int>(column) + 1};
}

bool is_text(const std::shared_ptr<const Source>& source, const Cells& cells, Context& context) {
    const std::string& text = source->text;
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) {
        context.fault(cell_at(source, 0, 0), "the file is UTF-16 text",
                      "export it as CSV in UTF-8");
        return false;
    }
    for (std::size_t r = 0; r < cells.rows.size(); ++r)
        for (std::size_t c = 0; c < cells.rows[r].size(); ++c)
            if (!is_text(cells.rows[r][c], cell_at(source, r, c), context))
                return false;
    return true;
}

bool tell_broken(const std::shared_ptr<const Source>& source, const Cells& cells,
                 Context& context) {
    if (!cells.broken)
        return false;
    const Place place{source, cells.broken->row, cells.broken->column};
    if (cells.unclosed)
        context.fault(place, "the quote that opens this cell is not closed",
                      "close it, or take it out");
    else
        context.fault(place, "a quote stands inside this cell",
                      "put the cell in quotes and write its own twice, as \"\"");
    return true;
}

std::size_t whole_rows(const Cells& cells) {
    return cells.broken ? static_cast<std::size_t>(cells.broken->row) - 1 : cells.rows.size();
}

void tell_no_head_word(const std::shared_ptr<const Source>& source, const Layout& layout,
                       std::size_t row, const std::string& remedy, Context& context) {
    const Row& cells = layout.cells.rows[row];
    const bool parted_otherwise =
        cells.size() == 1 && cells[0].find_first_of("\t;,") != std::string::npos;
    const std::string mark =
        layout.separator == '\t' ? "tabs" : std::string{'\'', layout.separator, '\''};
    context.fault(cell_at(source, row, 0), quoted(cells[0]) + " is no word for above the headings",
                  parted_otherwise ? "part its cells by " + mark + ", as those of the headings are"
                                   : remedy);
}

bool is_blank(const Row& row) {
    return std::all_of(row.begin(), row.end(),
                       [](const std::string& cell) { return trimmed(cell).empty(); });
}

std::string text_of_cell(std::string_view cell) {
    cell = trimmed(cell);
    if (cell.size() > 1 && cell[0] == '\'' &&
        std::string_view("=+-@").find(cell[1]) != std::string_view::npos)
        cell.remove_prefix(1);
    return std::string(cell);
}

} // namespace pelt::read
