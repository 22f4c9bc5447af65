// SPDX-License-Identifier: MIT
// One writer for every table: columns by display width, numbers to the right and never broken,
// names wrapped where the page is narrow.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace pelt::report {

enum class Align { left, right };

struct Column {
    std::string head;
    Align align = Align::left;
    bool wraps = false;  ///< may be made narrower; its cells then take several lines
    bool strong = false; ///< what hands work by: bold on paper
};

struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<std::string>> rows; ///< as many cells as columns, else a ProgramError
};

/// Words of `text` in lines of at most `width` columns; a longer word is broken.
std::vector<std::string> wrapped_lines(const std::string& text, int width);

/// The same for letters of any width: `measure` says how wide a text is.
std::vector<std::string>
lines_within(const std::string& text, double width,
             const std::function<double(const std::string& text)>& measure);

/// Head, rule and rows, each line ended; none ends in blanks. Names give way first where the page
/// is narrow, then rectangles break after their ×; a line is wider than `width` only if numbers
/// alone are.
std::string table_text(const Table& table, int width);

/// The same table in pipes, as Markdown readers know it; `|` in a cell is escaped.
std::string table_markdown(const Table& table);

} // namespace pelt::report
