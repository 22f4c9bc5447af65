// SPDX-License-Identifier: MIT
// What every format says of a plan, worked out once.
#pragma once

#include "report/report.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report {

/// A piece where it lies. References live as long as the plan's job.
struct PlacedPiece {
    int number = 0;       ///< 1, 2, … over all rolls, in the order in which pieces come free
    std::size_t roll = 0; ///< index into the layout's rolls
    const Piece& piece;
    const PieceId& id;
    const Vehicle& vehicle;
    const Panel& panel;
    const CutShape& shape;
    Turn turn;
    Polygon outline; ///< as cut, roll frame
    Polygon wrapped; ///< the film that stays on, roll frame
    Box cut_box() const { return box_of(outline.outer); }
    Box finished_box() const { return box_of(wrapped.outer); }
};

std::vector<PlacedPiece> pieces_by_number(const Plan& plan);

/// What the panel asks of the film; unknown where nothing was developed.
StretchAsked stretch_of(const Job& job, const PieceId& id);

/// "exact", "estimate" or "unknown".
std::string_view name_of(StretchAsked::Is is);

/// A figure that never was on the grid, to three decimals. NaN and infinities are a ProgramError.
std::string rounded_percent(double value);

/// Twice the area of a ring less its holes.
DoubleArea doubled_area(const Polygon& polygon);

/// Outlines less openings of everything that the pieces cover, in thousandths of a mm²; none where
/// nothing was developed.
std::optional<std::int64_t> visible_of(const Plan& plan);

/// Off all rolls, and off the new ones alone.
Um length_of(const Plan& plan);
Um new_length_of(const Plan& plan);

/// What is there of a used roll: the length bought for a new one, the stock's length for another;
/// none where it is as long as is wanted.
std::optional<Length> available_of(const Sheet& sheet, std::size_t used);

/// The least margin to grip that any panel of the plan was allowed.
Um handling_least_of(const Plan& plan);

/// 1 − wrapped / film in millionths of a percent, to the nearest.
std::int64_t waste_micropercent(const Areas& areas);

/// The film that a flaw takes on a roll of that width.
Box box_of(const Flaw& flaw, Um roll_width);

/// Of a roll whose batch is written down; empty for others, those of which it is only known that
/// they are of one batch with another.
std::string known_batch_of(const Roll& roll);

bool is_demonstration(const Job& job);
/// The vehicles' names, joined.
std::string vehicles_of(const Job& job);
/// The same, with ", 3 times" where there are several of each.
std::string vehicles_and_times(const Job& job);

/// Of the texts of the vehicles, of all that belongs to them and of the film; empty: nothing was
/// read from files.
std::string check_code_of(const Job& job);
/// The sheet's own check code, or that of the texts that the job was read from.
std::string check_code_of(const Sheet& sheet);

} // namespace pelt::report
