// SPDX-License-Identifier: MIT
#include "report/roll_text.hpp"

#include "model/utf8.hpp"
#include "report/roll_lattice.hpp"
#include "report/text_table.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace pelt::report {
namespace {

constexpr int indent = 2;
constexpr int most_strips = 12;
// By arms: up 1, right 2, down 4, left 8.
constexpr std::array<std::string_view, 16> lines{" ", "│", "─", "└", "│", "│", "┌", "├",
                                                 "─", "┘", "─", "┴", "┐", "┤", "┬", "┼"};
constexpr std::array<std::string_view, 16> ascii_lines{" ", "|", "-", "+", "|", "|", "+", "+",
                                                       "-", "+", "-", "+", "+", "+", "+", "+"};

// Black on light blue and on light orange: they differ for every kind of colour vision (after the
// palette of M. Okabe and K. Ito, Color Universal Design, 2008; the tints are our own).
constexpr std::string_view on_blue = "\x1b[30;48;5;153m";
constexpr std::string_view on_orange = "\x1b[30;48;5;222m";
constexpr std::string_view plain_again = "\x1b[0m";

struct Character {
    std::string text = " ";
    int piece = outside; ///< whose inside it is
};

/// Rows of characters, the far edge first, as one long strip.
class Canvas {
public:
    Canvas(const RollSketch& roll, const Lattice& lattice, const Scale& scale, bool ascii)
        : roll_(roll), columns_(lattice.along()), rows_(lattice.across() - 1),
          strip_(scale.columns) {
        for (int row = 0; row < rows_; ++row)
            for (int column = 0; column < columns_; ++column)
                cells_.push_back(character(lattice, column, rows_ - 1 - row, ascii));
        for (std::size_t k = 0; k < roll.pieces.size(); ++k)
            if (!label(static_cast<int>(k)))
                unlabelled_.push_back(roll.pieces[k].labels.back());
    }

    int columns() const { return columns_; }
    int rows() const { return rows_; }
    const Character& at(int column, int row) const {
        return cells_[static_cast<std::size_t>(row * columns_ + column)];
    }
    /// Pieces that have no room for the shortest of their labels.
    const std::vector<std::string>& unlabelled() const { return unlabelled_; }

private:
    static Character character(const Lattice& lattice, int i, int j, bool ascii) {
        const int low = lattice.at(i, j);
        const int high = lattice.at(i, j + 1);
        const int low_next = lattice.at(i + 1, j);
        const int high_next = lattice.at(i + 1, j + 1);
        const std::size_t arms = (high != high_next ? 1U : 0U) + (high_next != low_next ? 2U : 0U) +
                                 (low != low_next ? 4U : 0U) + (low != high ? 8U : 0U);
        if (arms != 0)
            return {std::string((ascii ? ascii_lines : lines)[arms]), outside};
        if (low == flawed)
            return {ascii ? "#" : "╳", flawed};
        if (low == left_over)
            return {ascii ? "." : "░", left_over};
        return {" ", low};
    }

    struct Run {
        int row = 0;
        int first = 0;
        int count = 0;
    };

    /// The widest run of a piece's inside, the middle one of several.
    Run room_of(int piece) const {
        std::vector<Run> best;
        for (int row = 0; row < rows_; ++row)
            for (int column = 0; column < columns_;) {
                const int strip_end = std::min((column / strip_ + 1) * strip_, columns_);
                int end = column;
                while (end < strip_end && at(end, row).piece == piece)
                    ++end;
                const Run run{row, column, end - column};
                if (run.count > 0 && (best.empty() || run.count >= best.front().count)) {
                    if (!best.empty() && run.count > best.front().count)
                        best.clear();
                    best.push_back(run);
                }
                column = std::max(end, column + 1);
            }
        return best.empty() ? Run{} : best[best.size() / 2];
    }

    bool label(int piece) {
        const Run room = room_of(piece);
        for (const std::string& text : roll_.pieces[static_cast<std::size_t>(piece)].labels) {
            const int wide = display_width(text);
            if (wide > room.count)
                continue;
            write(text, room.first + (room.count - wide) / 2, room.row);
            return true;
        }
        return false;
    }

    void write(const std::string& text, int column, int row) {
        for (const char32_t c : code_points(text)) {
            const int wide = display_width(c);
            if (wide == 0)
                continue;
            cells_[static_cast<std::size_t>(row * columns_ + column)].text = utf8(c);
            for (int more = 1; more < wide; ++more)
                cells_[static_cast<std::size_t>(row * columns_ + column + more)].text = "";
            column += wide;
        }
    }

    const RollSketch& roll_;
    int columns_;
    int rows_;
    int strip_; ///< columns of one strip: no label runs over its end
    std::vector<Character> cells_;
    std::vector<std::string> unlabelled_;
};

class Printer {
public:
    Printer(const RollSketch& roll, const Scale& scale, const Canvas& canvas,
            const TextStyle& style)
        : roll_(roll), scale_(scale), canvas_(canvas), style_(style) {}

    std::string printed() const {
        std::string out;
        for (int first = 0; first < canvas_.columns(); first += scale_.columns) {
            const int end = std::min(first + scale_.columns, canvas_.columns());
            for (int row = 0; row < canvas_.rows(); ++row)
                out += line(first, end, row) + "\n";
            out += distances(first, end) + "\n";
        }
        return out;
    }

private:
    std::string_view colour_of(const Character& c) const {
        if (!style_.colour || c.piece < 0)
            return {};
        switch (roll_.pieces[static_cast<std::size_t>(c.piece)].tint) {
        case Tint::left:
            return on_blue;
        case Tint::right:
            return on_orange;
        case Tint::plain:
            break;
        }
        return {};
    }

    std::string line(int first, int end, int row) const {
        std::string out(indent, ' ');
        std::string_view colour;
        for (int column = first; column < end; ++column) {
            const Character& c = canvas_.at(column, row);
            if (const std::string_view wanted = colour_of(c); wanted != colour) {
                if (!colour.empty())
                    out += plain_again;
                out += wanted;
                colour = wanted;
            }
            out += c.text;
        }
        if (!colour.empty())
            out += plain_again;
        out.erase(out.find_last_not_of(' ') + 1);
        return out;
    }

    /// A distance stands to the right of its mark, which is below its place.
    std::string distances(int first, int end) const {
        std::string out;
        int column = first;
        for (std::size_t i = 0; i < roll_.ticks.size(); ++i) {
            const auto at = static_cast<int>(static_cast<Um>(i) * roll_.tick / scale_.column);
            const std::string text = (style_.ascii ? "'" : "╵") + roll_.ticks[i];
            if (at < column || at + display_width(text) > end)
                continue;
            out += std::string(static_cast<std::size_t>(at - column), ' ') + text;
            column = at + display_width(text) + 1;
            out += ' ';
        }
        out.erase(out.find_last_not_of(' ') + 1);
        return std::string(indent, ' ') + out;
    }

    const RollSketch& roll_;
    Scale scale_;
    const Canvas& canvas_;
    const TextStyle& style_;
};

std::string list_of(const std::vector<std::string>& labels) {
    std::string out;
    for (const std::string& label : labels)
        out += (out.empty() ? "" : ", ") + label;
    return out;
}

} // namespace

std::string roll_text(const RollSketch& roll, const TextStyle& style) {
    if (roll.length <= 0 || roll.width <= 0)
        return {};
    const Scale scale = scale_for(roll, std::clamp(style.width, 60, 120) - indent);
    const std::string before(indent, ' ');
    std::string title;
    if (!roll.title.empty())
        for (const std::string& line : wrapped_lines(roll.title, scale.columns))
            title += before + line + "\n";
    if (scale.strips > most_strips)
        return title + before + "Too long to be drawn here; --format svg draws it.\n";
    const Lattice lattice(roll, scale);
    const Canvas canvas(roll, lattice, scale, style.ascii);
    std::string out = title + Printer(roll, scale, canvas, style).printed();
    if (canvas.unlabelled().empty())
        return out;
    const std::string small =
        "Too small for their numbers here: " + list_of(canvas.unlabelled()) + ".";
    for (const std::string& line : wrapped_lines(small, scale.columns))
        out += before + line + "\n";
    return out;
}

} // namespace pelt::report
