// SPDX-License-Identifier: MIT
#include "report/text_table.hpp"

#include "model/error.hpp"
#include "model/utf8.hpp"

#include <algorithm>
#include <cstddef>
#include <functional>
#include <set>
#include <string_view>

namespace pelt::report {
namespace {

constexpr int between = 2;
constexpr int least_wrapped = 6;

std::string blanks(int count) {
    return std::string(static_cast<std::size_t>(std::max(count, 0)), ' ');
}

std::string padded(const std::string& cell, int width, Align align) {
    const std::string pad = blanks(width - display_width(cell));
    return align == Align::right ? pad + cell : cell + pad;
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// A number keeps its unit, its fraction and the other side of its rectangle.
bool belongs_to(const std::string& word, const std::string& next) {
    static const std::set<std::string, std::less<>> glued{"×",  "mm", "cm", "m",  "in",
                                                          "ft", "yd", "%",  "m²", "sq"};
    static const std::set<std::string, std::less<>> leading{"no.", "part", "of"};
    if (word == "×" || (leading.count(word) > 0 && !next.empty() && is_digit(next.front())))
        return true;
    if (word.empty() || !is_digit(word.back()) || next.empty())
        return false;
    const bool fraction = is_digit(next.front()) && next.find('/') != std::string::npos;
    const std::size_t end = next.find_last_not_of(".,;:)");
    return fraction || glued.count(std::string_view(next).substr(0, end + 1)) > 0;
}

/// What may stand at the beginning of a line: words, and numbers with what belongs to them.
std::vector<std::string> words_of(const std::string& text) {
    std::vector<std::string> words;
    std::string last;
    std::size_t begin = 0;
    while ((begin = text.find_first_not_of(' ', begin)) != std::string::npos) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        const std::string word = text.substr(begin, end - begin);
        if (belongs_to(last, word))
            words.back() += " " + word;
        else
            words.push_back(word);
        last = word;
        begin = end;
    }
    return words;
}

int widest_cell(const Table& table, std::size_t column) {
    int width = 0;
    for (const auto& row : table.rows)
        width = std::max(width, display_width(row[column]));
    return width;
}

int longest_word(const std::string& text) {
    int width = 0;
    for (const std::string& word : words_of(text))
        width = std::max(width, display_width(word));
    return width;
}

/// A rectangle or a place in the lines that a narrow page needs: after its sign, never in a number.
std::vector<std::string> parts_of(const std::string& cell) {
    std::vector<std::string> parts;
    std::size_t begin = 0;
    for (const std::string_view sign : {" × ", " / "})
        if (const std::size_t at = cell.find(sign); at != std::string::npos && parts.empty()) {
            parts.push_back(cell.substr(0, at + sign.size() - 1));
            begin = at + sign.size();
        }
    parts.push_back(cell.substr(begin));
    return parts;
}

int widest_part(const Table& table, std::size_t column) {
    int width = 0;
    for (const auto& row : table.rows)
        for (const std::string& part : parts_of(row[column]))
            width = std::max(width, display_width(part));
    return width;
}

/// The longest word of a column's cells.
int longest_word_in(const Table& table, std::size_t column) {
    int width = 0;
    for (const auto& row : table.rows)
        width = std::max(width, longest_word(row[column]));
    return width;
}

/// What may give way to a narrow page, the first before the next.
enum class Gives { names, rectangles, words };

/// How narrow a column may become: at first names run over several lines, then rectangles are
/// divided too, at last words.
int least_width(const Table& table, std::size_t c, Gives gives) {
    const int cells = widest_cell(table, c);
    const int wrapped =
        gives == Gives::words ? least_wrapped : std::max(least_wrapped, longest_word_in(table, c));
    const int least = table.columns[c].wraps  ? std::min(cells, wrapped)
                      : gives == Gives::names ? cells
                                              : widest_part(table, c);
    return std::max(least, longest_word(table.columns[c].head));
}

/// Takes columns from the widest that can give, one by one, until nothing is over or none can.
int narrowed(std::vector<int>& widths, const std::vector<int>& least, int over) {
    for (; over > 0; --over) {
        std::size_t widest = widths.size();
        for (std::size_t c = 0; c < widths.size(); ++c)
            if (widths[c] > least[c] && (widest == widths.size() || widths[c] > widths[widest]))
                widest = c;
        if (widest == widths.size())
            break;
        --widths[widest];
    }
    return over;
}

std::vector<int> fitted_widths(const Table& table, int width) {
    std::vector<int> widths;
    int over = between * (static_cast<int>(table.columns.size()) - 1) - width;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        widths.push_back(std::max(widest_cell(table, c), display_width(table.columns[c].head)));
        over += widths.back();
    }
    for (const Gives gives : {Gives::names, Gives::rectangles, Gives::words}) {
        std::vector<int> least;
        for (std::size_t c = 0; c < widths.size(); ++c)
            least.push_back(least_width(table, c, gives));
        over = narrowed(widths, least, over);
    }
    return widths;
}

std::vector<std::string> lines_of_cell(const std::string& cell, bool wraps, int width) {
    if (wraps)
        return wrapped_lines(cell, width);
    return display_width(cell) <= width ? std::vector{cell} : parts_of(cell);
}

std::string without_trailing_blanks(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line;
}

std::string row_text(const Table& table, const std::vector<std::string>& cells,
                     const std::vector<int>& widths, bool head) {
    std::vector<std::vector<std::string>> lines;
    std::size_t height = 1;
    for (std::size_t c = 0; c < cells.size(); ++c) {
        lines.push_back(lines_of_cell(cells[c], head || table.columns[c].wraps, widths[c]));
        height = std::max(height, lines.back().size());
    }
    std::string text;
    for (std::size_t l = 0; l < height; ++l) {
        std::string line;
        for (std::size_t c = 0; c < cells.size(); ++c) {
            const std::string part = l < lines[c].size() ? lines[c][l] : "";
            line +=
                (c == 0 ? "" : blanks(between)) + padded(part, widths[c], table.columns[c].align);
        }
        text += without_trailing_blanks(line) + "\n";
    }
    return text;
}

using Measure = std::function<double(const std::string&)>;

/// The longest beginning of `word` that fits, at least one character.
std::size_t bytes_that_fit(const std::string& word, double width, const Measure& measure) {
    std::size_t bytes = 0;
    for (const char32_t c : code_points(word)) {
        const std::size_t more = std::min(bytes + utf8(c).size(), word.size());
        if (bytes > 0 && measure(word.substr(0, more)) > width)
            break;
        bytes = more;
    }
    return bytes;
}

void check(const Table& table) {
    for (const auto& row : table.rows)
        if (row.size() != table.columns.size())
            throw ProgramError("a table's row has not as many cells as the table has columns");
}

std::string pipe_row(const std::vector<std::string>& cells) {
    std::string line = "|";
    for (const std::string& cell : cells) {
        line += " ";
        for (const char c : cell)
            line += c == '|' ? "\\|" : std::string(1, c);
        line += " |";
    }
    return line + "\n";
}

} // namespace

std::vector<std::string> lines_within(const std::string& text, double width,
                                      const Measure& measure) {
    std::vector<std::string> lines(1);
    for (std::string word : words_of(text)) {
        const std::string longer = lines.back() + (lines.back().empty() ? "" : " ") + word;
        if (measure(longer) <= width) {
            lines.back() = longer;
            continue;
        }
        if (!lines.back().empty())
            lines.emplace_back();
        while (measure(word) > width) {
            const std::size_t bytes = bytes_that_fit(word, width, measure);
            if (bytes == word.size())
                break;
            lines.back() = word.substr(0, bytes);
            lines.emplace_back();
            word = word.substr(bytes);
        }
        lines.back() = word;
    }
    return lines;
}

std::vector<std::string> wrapped_lines(const std::string& text, int width) {
    return lines_within(text, width, [](const std::string& t) { return display_width(t); });
}

std::string table_text(const Table& table, int width) {
    check(table);
    const std::vector<int> widths = fitted_widths(table, width);
    std::vector<std::string> heads;
    std::vector<std::string> rules;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        heads.push_back(table.columns[c].head);
        rules.emplace_back(static_cast<std::size_t>(widths[c]), '-');
    }
    std::string text = row_text(table, heads, widths, true) + row_text(table, rules, widths, false);
    for (const auto& row : table.rows)
        text += row_text(table, row, widths, false);
    return text;
}

std::string table_markdown(const Table& table) {
    check(table);
    std::vector<std::string> heads;
    std::string rule = "|";
    for (const Column& column : table.columns) {
        heads.push_back(column.head);
        rule += column.align == Align::right ? " ---: |" : " --- |";
    }
    std::string text = pipe_row(heads) + rule + "\n";
    for (const auto& row : table.rows)
        text += pipe_row(row);
    return text;
}

} // namespace pelt::report
