// SPDX-License-Identifier: MIT
#include "report/legend.hpp"

#include <algorithm>
#include <functional>
#include <vector>

namespace pelt::report {
namespace {

using draw::Look;

// In terms of the letters' size.
constexpr double swatch_width = 2.1;
constexpr double swatch_height = 1.0;
constexpr double before_words = 0.7;
constexpr double pitch = 1.5;
constexpr double between = 1.6;

struct Row {
    Look look;
    std::string words;
};

/// What a drawing has.
struct Drawn {
    std::vector<const PlacedPiece*> pieces;
    std::vector<const Roll*> rolls;
    bool says_sizes = true; ///< and what comes with them: laps, numbered cuts, arrows
    bool straight = true;

    bool any_piece(const std::function<bool(const PlacedPiece&)>& is) const {
        return std::any_of(pieces.begin(), pieces.end(),
                           [&](const PlacedPiece* p) { return is(*p); });
    }
    bool any_roll(const std::function<bool(const Roll&)>& is) const {
        return std::any_of(rolls.begin(), rolls.end(), [&](const Roll* r) { return is(*r); });
    }
};

std::vector<Row> rows_of(const Drawn& drawn) {
    std::vector<Row> rows{{Look::blank, "as cut from the roll"},
                          {Look::wrapped, "stays on the vehicle"}};
    if (drawn.any_piece([](const PlacedPiece& p) { return p.id.kind == PieceKind::inlay; }))
        rows.push_back({Look::inlay, "inlay, stays on the vehicle"});
    if (drawn.says_sizes && drawn.any_piece([](const PlacedPiece& p) { return p.id.parts > 1; }))
        rows.push_back({Look::lap, "lap: the other piece ends here"});
    if (drawn.any_piece([](const PlacedPiece& p) { return !p.wrapped.holes.empty(); }))
        rows.push_back({Look::finished_line, "opening: film is cut out"});
    rows.push_back({Look::left_over, "left over"});
    if (drawn.any_roll([](const Roll& roll) { return !roll.flaws.empty(); }))
        rows.push_back({Look::flaw, "flaw: not used"});
    if (drawn.any_roll([](const Roll& roll) { return roll.trim > 0; }))
        rows.push_back({Look::roll_edge, "roll edge not used"});
    if (drawn.straight)
        rows.push_back({Look::cut, drawn.says_sizes ? "cuts, numbered in the order made" : "cuts"});
    if (drawn.says_sizes)
        rows.push_back({Look::arrow, "forward on the vehicle"});
    return rows;
}

std::vector<Row> rows_of(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                         bool says_sizes) {
    Drawn drawn{{}, {}, says_sizes, sheet.plan.job().by == CutBy::straight};
    for (const PlacedPiece& piece : pieces)
        drawn.pieces.push_back(&piece);
    for (const Roll& roll : sheet.plan.job().rolls)
        drawn.rolls.push_back(&roll);
    return rows_of(drawn);
}

void put_row(draw::Picture& picture, const Row& row, double x, double y, double size) {
    const double width = swatch_width * size;
    const double height = swatch_height * size;
    const draw::Point middle{x + width / 2, y + height / 2};
    if (row.look == Look::arrow)
        picture.marks.push_back(draw::Arrow{middle, 0.95 * width, 0});
    else if (row.look == Look::cut || row.look == Look::lap)
        picture.marks.push_back(
            draw::Path{row.look, {{{x, middle.y}, {x + width, middle.y}}}, false});
    else
        picture.marks.push_back(draw::Rectangle{row.look, {x, y, width, height}});
    picture.marks.push_back(draw::Text{
        row.words, {x + width + before_words * size, middle.y}, size, draw::Anchor::start});
}

double width_of(const Row& row, double size, const draw::Letters& letters) {
    return (swatch_width + before_words) * size + letters.width(row.words, size);
}

/// One after the other, in as few lines as fit.
draw::Picture in_lines(const std::vector<Row>& rows, double size, double width,
                       const draw::Letters& letters) {
    draw::Picture picture;
    picture.width = width;
    double x = 0;
    for (const Row& row : rows) {
        const double room = width_of(row, size, letters);
        if (x > 0 && x + room > width) {
            x = 0;
            picture.height += pitch * size;
        }
        put_row(picture, row, x, picture.height, size);
        x += room + between * size;
    }
    picture.height += pitch * size;
    return picture;
}

} // namespace

draw::Picture legend_picture(const Sheet& sheet, double size, const draw::Letters& letters) {
    draw::Picture picture;
    for (const Row& row : rows_of(sheet, pieces_by_number(sheet.plan), true)) {
        put_row(picture, row, 0, picture.height, size);
        picture.width = std::max(picture.width, width_of(row, size, letters));
        picture.height += pitch * size;
    }
    return picture;
}

draw::Picture legend_lines(const Sheet& sheet, double size, double width,
                           const draw::Letters& letters) {
    return in_lines(rows_of(sheet, pieces_by_number(sheet.plan), false), size, width, letters);
}

draw::Picture legend_of_stretch(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                                const StretchOfRoll& stretch, double size, double width,
                                const draw::Letters& letters) {
    const Plan& plan = sheet.plan;
    Drawn drawn{{},
                {&plan.job().rolls.at(plan.layout().rolls.at(stretch.used_roll).roll)},
                true,
                plan.job().by == CutBy::straight};
    for (const PlacedPiece& piece : pieces) {
        const Box box = piece.cut_box();
        if (piece.roll == stretch.used_roll && box.low.x < stretch.to && box.high.x > stretch.from)
            drawn.pieces.push_back(&piece);
    }
    return in_lines(rows_of(drawn), size, width, letters);
}

std::string roll_title(const Sheet& sheet, std::size_t used_roll, const Measures& measures) {
    const UsedRoll& used = sheet.plan.layout().rolls.at(used_roll);
    const Roll& roll = sheet.plan.job().rolls.at(used.roll);
    return "Roll " + roll.name + ": " + measures.film(used.length) + " × " +
           measures.size_with_unit(roll.width);
}

} // namespace pelt::report
