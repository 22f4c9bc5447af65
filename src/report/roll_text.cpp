// SPDX-License-Identifier: MIT
// The film is looked at in the points of a lattice. A character stands between four of them, and
// has an arm towards each side on which two neighbours see different things: any outline becomes a
// frame of single lines, shared by pieces that touch.
#include "report/roll_text.hpp"

#include "model/utf8.hpp"
#include "report/text_table.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace pelt::report {
namespace {

constexpr int indent = 2;
constexpr int usual_rows = 10; ///< for the width of the roll
constexpr int most_rows = 14;  ///< where a short roll leaves room
constexpr int most_strips = 12;
/// A character is about twice as high as wide.
constexpr Um height_by_width = 2;

constexpr int outside = -1;
constexpr int left_over = -2;
constexpr int flawed = -3;

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

struct Scale {
    Um column = 0; ///< film along, a character
    int rows = 0;  ///< for the width of the film
    int columns = 0;
    int strips = 0;
};

Scale scale_for(const RollSketch& roll, int columns) {
    const auto column_for = [&](int rows) {
        return std::max<Um>(1, roll.width / (rows * height_by_width));
    };
    const Um strip = column_for(usual_rows) * (columns - 2);
    const auto strips = static_cast<int>((roll.length + strip - 1) / strip);
    // The strips of equal length fill the page.
    const Um even = (roll.length + strips * (columns - 2) - 1) / (strips * (columns - 2));
    const Um column = std::max(even, column_for(most_rows));
    const Um row = column * height_by_width;
    return {column, static_cast<int>(std::max<Um>(1, (roll.width + row / 2) / row)), columns,
            strips};
}

/// Whether a ray from the point towards +x crosses the ring an odd number of times.
bool is_within(GridPoint p, const Ring& ring) {
    bool within = false;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const GridPoint a = ring[i];
        const GridPoint b = ring[(i + 1) % ring.size()];
        if ((a.y > p.y) == (b.y > p.y))
            continue;
        const Int128 side = Int128{b.x - a.x} * (p.y - a.y) - Int128{p.x - a.x} * (b.y - a.y);
        within = within != (b.y > a.y ? side > 0 : side < 0);
    }
    return within;
}

bool holds(const Polygon& polygon, GridPoint p) {
    return is_within(p, polygon.outer) &&
           std::none_of(polygon.holes.begin(), polygon.holes.end(),
                        [&](const Ring& hole) { return is_within(p, hole); });
}

/// What the points of the lattice see. Point (i, j) lies at ((i - 1/2) columns, (j - 1/2) rows), so
/// that the first and the last row, and the first point, lie off the film.
class Lattice {
public:
    Lattice(const RollSketch& roll, const Scale& scale) : roll_(roll), scale_(scale) {
        for (const DrawnPiece& piece : roll.pieces)
            boxes_.push_back(box_of(piece.outline.outer));
        across_ = scale.rows + 2;
        along_ = static_cast<int>((roll.length + scale.column - 1) / scale.column) + 2;
        for (int i = 0; i < along_; ++i)
            for (int j = 0; j < across_; ++j)
                seen_.push_back(look(i, j));
    }

    int along() const { return along_; }
    int across() const { return across_; }
    int at(int i, int j) const {
        return i >= along_ ? outside : seen_[static_cast<std::size_t>(i * across_ + j)];
    }

private:
    GridPoint point(int i, int j) const {
        return {(2 * i - 1) * scale_.column / 2, (2 * j - 1) * roll_.width / (2 * scale_.rows)};
    }

    int look(int i, int j) const {
        const GridPoint p = point(i, j);
        if (p.x < 0 || p.y < 0 || p.y > roll_.width)
            return outside;
        if (const auto piece = piece_at(p))
            return *piece;
        if (const auto piece = piece_beside_gap(p))
            return *piece;
        if (p.x > roll_.length)
            return outside;
        return is_flawed(p) ? flawed : left_over;
    }

    /// Between two pieces there may be a gap far thinner than a character.
    std::optional<int> piece_beside_gap(GridPoint p) const {
        const Um aside = scale_.column / 4;
        for (const GridPoint by : {GridPoint{aside, 0}, GridPoint{0, aside}}) {
            const auto before = piece_at({p.x - by.x, p.y - by.y});
            const auto after = piece_at({p.x + by.x, p.y + by.y});
            if (before && after)
                return *before;
        }
        return std::nullopt;
    }

    std::optional<int> piece_at(GridPoint p) const {
        for (std::size_t k = 0; k < boxes_.size(); ++k) {
            const Box& box = boxes_[k];
            if (p.x >= box.low.x && p.x <= box.high.x && p.y >= box.low.y && p.y <= box.high.y &&
                holds(roll_.pieces[k].outline, p))
                return static_cast<int>(k);
        }
        return std::nullopt;
    }

    bool is_flawed(GridPoint p) const {
        return std::any_of(roll_.flaws.begin(), roll_.flaws.end(), [&](const Flaw& flaw) {
            return p.x >= flaw.from && p.x <= flaw.to && p.y >= flaw.low.value_or(0) &&
                   p.y <= flaw.high.value_or(roll_.width);
        });
    }

    const RollSketch& roll_;
    Scale scale_;
    std::vector<Box> boxes_;
    int across_ = 0;
    int along_ = 0;
    std::vector<int> seen_;
};

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
    if (scale.strips > most_strips)
        return before + "Too long to be drawn here; --format svg draws it.\n";
    const Lattice lattice(roll, scale);
    const Canvas canvas(roll, lattice, scale, style.ascii);
    std::string out = Printer(roll, scale, canvas, style).printed();
    if (canvas.unlabelled().empty())
        return out;
    const std::string small =
        "Too small for their numbers here: " + list_of(canvas.unlabelled()) + ".";
    for (const std::string& line : wrapped_lines(small, scale.columns))
        out += before + line + "\n";
    return out;
}

} // namespace pelt::report
