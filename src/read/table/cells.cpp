// SPDX-License-Identifier: MIT
#include "read/table/cells.hpp"

#include "model/error.hpp"

#include <csv.h>

#include <algorithm>
#include <cctype>

namespace pelt::read {
namespace {

int is_blank(unsigned char c) {
    return c == ' ' ? 1 : 0; // a tab may be the separator
}

/// What the parser tells, put into rows.
class Rows {
public:
    void cell(std::string_view text) {
        current_.emplace_back(text);
        after_return_ = false;
    }
    /// `ended_by` is the character that did it; -1 at the end of the text.
    void row(int ended_by) {
        const bool second_half = ended_by == '\n' && after_return_ && current_.empty();
        after_return_ = ended_by == '\r';
        if (second_half || (ended_by == -1 && current_.empty()))
            return;
        rows_.push_back(std::move(current_));
        current_.clear();
    }
    CellAt here() const {
        return {static_cast<int>(rows_.size()) + 1, static_cast<int>(current_.size()) + 1};
    }
    /// Cells of a row that was not finished are of use still.
    std::vector<Row> all() {
        if (!current_.empty())
            rows_.push_back(std::move(current_));
        return std::move(rows_);
    }

private:
    std::vector<Row> rows_;
    Row current_;
    bool after_return_ = false;
};

void add_cell(void* text, std::size_t length, void* rows) {
    static_cast<Rows*>(rows)->cell({static_cast<const char*>(text), length});
}

void end_row(int ended_by, void* rows) {
    static_cast<Rows*>(rows)->row(ended_by);
}

class Parser {
public:
    explicit Parser(char separator) {
        constexpr unsigned char options =
            CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL | CSV_APPEND_NULL;
        if (csv_init(&parser_, options) != 0)
            throw ProgramError("the parser of tables could not be started");
        csv_set_delim(&parser_, static_cast<unsigned char>(separator));
        csv_set_space_func(&parser_, is_blank);
    }
    ~Parser() { csv_free(&parser_); }
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;

    bool reads(std::string_view text, Rows& rows) {
        return csv_parse(&parser_, text.data(), text.size(), add_cell, end_row, &rows) ==
               text.size();
    }
    bool ends(Rows& rows) { return csv_fini(&parser_, add_cell, end_row, &rows) == 0; }

private:
    csv_parser parser_{};
};

} // namespace

Cells cells_of(std::string_view text, char separator) {
    Rows rows;
    Parser parser(separator);
    Cells out;
    if (!parser.reads(text, rows)) {
        out.broken = rows.here();
    } else {
        const CellAt last = rows.here();
        if (!parser.ends(rows)) {
            out.broken = last;
            out.unclosed = true;
        }
    }
    out.rows = rows.all();
    return out;
}

bool is_table_name(std::string_view file) {
    constexpr std::string_view ending = ".csv";
    if (file.size() <= ending.size())
        return false;
    const std::string_view last = file.substr(file.size() - ending.size());
    return std::equal(last.begin(), last.end(), ending.begin(), [](char a, char b) {
        return std::tolower(static_cast<unsigned char>(a)) == b;
    });
}

} // namespace pelt::read
