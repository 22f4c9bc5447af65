// SPDX-License-Identifier: MIT
#include "report/roll_sketch.hpp"

#include "report/facts.hpp"
#include "report/words.hpp"

namespace pelt::report {
namespace {

/// "12 front door, left", "12 left", "12": a narrow piece has room for the last alone.
std::vector<std::string> labels_of(const Job& job, const PlacedPiece& piece) {
    const std::string number = std::to_string(piece.number);
    const std::string side =
        piece.id.side == Side::centre ? "" : std::string(name_of(piece.id.side));
    std::vector<std::string> labels{number + " " + label_of(job, piece.id) +
                                    (side.empty() ? "" : ", " + side)};
    if (!side.empty())
        labels.push_back(number + " " + side);
    labels.push_back(number);
    return labels;
}

Tint tint_of(Side side) {
    switch (side) {
    case Side::left:
        return Tint::left;
    case Side::right:
        return Tint::right;
    case Side::centre:
        break;
    }
    return Tint::plain;
}

} // namespace

RollSketch sketch_of(const Sheet& sheet, std::size_t used_roll, const Measures& measures) {
    const UsedRoll& used = sheet.plan.layout().rolls.at(used_roll);
    const Roll& roll = sheet.plan.job().rolls.at(used.roll);
    RollSketch out;
    out.width = roll.width;
    out.length = used.length;
    out.flaws = roll.flaws;
    for (const PlacedPiece& piece : pieces_by_number(sheet.plan))
        if (piece.roll == used_roll)
            out.pieces.push_back(
                {piece.outline, labels_of(sheet.plan.job(), piece), tint_of(piece.id.side)});
    out.tick = measures.tick();
    for (Um at = 0; at <= used.length; at += out.tick)
        out.ticks.push_back(at == 0 ? "0" : measures.film(at));
    return out;
}

} // namespace pelt::report
