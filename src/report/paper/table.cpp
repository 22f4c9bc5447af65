// SPDX-License-Identifier: MIT
#include "report/paper/table.hpp"

#include <algorithm>

namespace pelt::report::paper {
namespace {

// In terms of the letters' size.
constexpr double between = 0.95; ///< columns
constexpr double pitch = 1.25;  ///< lines of a cell
constexpr double row_room = 0.3;
constexpr double tick_box_side = 1.2;
constexpr double least_wrapped = 7;
constexpr double narrowest_table_type = 1.9; ///< millimetres

constexpr const char* tick_box = "[  ]";

class TableSetter {
public:
    TableSetter(const Table& table, double width, double type, const draw::Letters& letters)
        : table_(table), width_(width), type_(type), letters_(letters) {
        while (!fits() && type_ > narrowest_table_type)
            type_ *= 0.96;
        widen();
    }

    SetTable set() const {
        std::vector<std::string> heads;
        for (const Column& column : table_.columns)
            heads.push_back(column.head);
        SetTable out;
        out.head = row(heads, true);
        for (const std::vector<std::string>& cells : table_.rows)
            out.rows.push_back(row(cells, false));
        return out;
    }

private:
    double width_of(const std::string& text, draw::Face face) const {
        return text == tick_box ? tick_box_side * type_ : letters_.width(text, type_, face);
    }

    draw::Face face_of(std::size_t c, bool head) const {
        return head || table_.columns[c].strong ? draw::Face::bold : draw::Face::plain;
    }

    /// Finds the widths of the columns; false where they do not fit even at their narrowest.
    bool fits() {
        widths_.clear();
        double sum = between * type_ * static_cast<double>(table_.columns.size() - 1);
        std::vector<double> least;
        for (std::size_t c = 0; c < table_.columns.size(); ++c) {
            double width = width_of(table_.columns[c].head, draw::Face::bold);
            for (const auto& cells : table_.rows)
                width = std::max(width, width_of(cells[c], face_of(c, false)));
            widths_.push_back(width);
            least.push_back(table_.columns[c].wraps ? std::min(width, least_wrapped * type_)
                                                    : width);
            sum += width;
        }
        return narrow(least, sum - width_);
    }

    /// Takes from the widest that can give.
    bool narrow(const std::vector<double>& least, double over) {
        const double step = 0.25 * type_;
        while (over > 1e-9) {
            std::size_t widest = widths_.size();
            for (std::size_t c = 0; c < widths_.size(); ++c)
                if (widths_[c] - step >= least[c] &&
                    (widest == widths_.size() || widths_[c] > widths_[widest]))
                    widest = c;
            if (widest == widths_.size())
                return false;
            widths_[widest] -= step;
            over -= step;
        }
        return true;
    }

    /// What is left of the width goes to the columns of words.
    void widen() {
        double spare = width_ - between * type_ * static_cast<double>(widths_.size() - 1);
        std::size_t count = 0;
        for (std::size_t c = 0; c < widths_.size(); ++c) {
            spare -= widths_[c];
            count += table_.columns[c].wraps ? 1 : 0;
        }
        for (std::size_t c = 0; c < widths_.size() && spare > 0; ++c)
            if (table_.columns[c].wraps)
                widths_[c] += spare / static_cast<double>(count);
    }

    std::vector<std::string> lines_of(const std::string& text, std::size_t c, bool head) const {
        if (!head && !table_.columns[c].wraps)
            return {text};
        const draw::Face face = face_of(c, head);
        return lines_within(text, widths_[c] + 1e-9,
                            [&](const std::string& t) { return width_of(t, face); });
    }

    draw::Picture row(const std::vector<std::string>& cells, bool head) const {
        std::vector<std::vector<std::string>> lines;
        std::size_t most = 1;
        for (std::size_t c = 0; c < cells.size(); ++c) {
            lines.push_back(lines_of(cells[c], c, head));
            most = std::max(most, lines.back().size());
        }
        draw::Picture out;
        out.width = width_;
        out.height = (pitch * static_cast<double>(most) + row_room) * type_;
        if (head)
            out.marks.push_back(draw::Rectangle{draw::Look::shade, {0, 0, width_, out.height}});
        else
            out.marks.push_back(
                draw::Path{draw::Look::rule, {{{0, out.height}, {width_, out.height}}}, false});
        double x = 0;
        for (std::size_t c = 0; c < cells.size(); ++c) {
            put_cell(out, lines[c], c, x, face_of(c, head));
            x += widths_[c] + between * type_;
        }
        return out;
    }

    void put_cell(draw::Picture& out, const std::vector<std::string>& lines, std::size_t c,
                  double x, draw::Face face) const {
        double y = (row_room / 2 + pitch / 2) * type_;
        if (lines.front() == tick_box) {
            const double side = tick_box_side * type_;
            out.marks.push_back(
                draw::Rectangle{draw::Look::tick_box, {x, y - side / 2, side, side}});
            return;
        }
        const bool right = table_.columns[c].align == Align::right;
        for (const std::string& line : lines) {
            out.marks.push_back(draw::Text{line,
                                           {right ? x + widths_[c] : x, y},
                                           type_,
                                           right ? draw::Anchor::end : draw::Anchor::start,
                                           face});
            y += pitch * type_;
        }
    }

    const Table& table_;
    double width_;
    double type_;
    const draw::Letters& letters_;
    std::vector<double> widths_;
};

} // namespace

double SetTable::height() const {
    double sum = head.height;
    for (const draw::Picture& row : rows)
        sum += row.height;
    return sum;
}

SetTable set_table(const Table& table, double width, double type, const draw::Letters& letters) {
    return TableSetter(table, width, type, letters).set();
}

} // namespace pelt::report::paper
