// SPDX-License-Identifier: MIT
#include "report/roll_lattice.hpp"

#include "report/facts.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

constexpr int usual_rows = 10; ///< for the width of the roll
constexpr int most_rows = 14;  ///< where a short roll leaves room
/// A character is about twice as high as wide.
constexpr Um height_by_width = 2;

bool lies_in(const Box& box, GridPoint p) {
    return p.x >= box.low.x && p.x <= box.high.x && p.y >= box.low.y && p.y <= box.high.y;
}

} // namespace

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

Lattice::Lattice(const RollSketch& roll, const Scale& scale) : roll_(roll), scale_(scale) {
    for (const DrawnPiece& piece : roll.pieces)
        boxes_.push_back(box_of(piece.outline.outer));
    across_ = scale.rows + 2;
    along_ = static_cast<int>((roll.length + scale.column - 1) / scale.column) + 2;
    for (int i = 0; i < along_; ++i)
        for (int j = 0; j < across_; ++j)
            seen_.push_back(look(i, j));
}

GridPoint Lattice::point(int i, int j) const {
    return {(2 * i - 1) * scale_.column / 2, (2 * j - 1) * roll_.width / (2 * scale_.rows)};
}

int Lattice::look(int i, int j) const {
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
std::optional<int> Lattice::piece_beside_gap(GridPoint p) const {
    const Um aside = scale_.column / 4;
    for (const GridPoint by : {GridPoint{aside, 0}, GridPoint{0, aside}}) {
        const auto before = piece_at({p.x - by.x, p.y - by.y});
        const auto after = piece_at({p.x + by.x, p.y + by.y});
        if (before && after)
            return *before;
    }
    return std::nullopt;
}

std::optional<int> Lattice::piece_at(GridPoint p) const {
    for (std::size_t k = 0; k < boxes_.size(); ++k) {
        if (lies_in(boxes_[k], p) && holds(roll_.pieces[k].outline, p))
            return static_cast<int>(k);
    }
    return std::nullopt;
}

bool Lattice::is_flawed(GridPoint p) const {
    return std::any_of(roll_.flaws.begin(), roll_.flaws.end(), [&](const Flaw& flaw) {
        return lies_in(report::box_of(flaw, roll_.width), p);
    });
}

} // namespace pelt::report
