// SPDX-License-Identifier: MIT
// How things are called on a sheet; nothing else spells these out.
#pragma once

#include "report/cut_steps.hpp"
#include "report/facts.hpp"
#include "report/numbers.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// What to call a piece: "front door", "roof, piece 1 of 2 (right)", "front bumper, inlay lower
/// grille", "step, no. 2", "wing, inner face"; the vehicle's name stands in front where there are
/// several.
std::string label_of(const Job& job, const PieceId& id);
/// With its side, where it has one: "front door, left".
std::string full_label_of(const Job& job, const PieceId& id);
/// Without piece, inlay, copy and side.
std::string panel_label(const Job& job, int vehicle, int panel);
/// "front door, left"; a centre panel is just its name.
std::string panel_label(const Job& job, int vehicle, int panel, Side side);

/// "front bumper/1", "door handle/left/no 2": as it is written behind an option.
std::string as_options_name(const Job& job, const LeftOut& what);

/// "its seam line 2, across, 720 mm from the front edge".
std::string place_text(const SeamPlace& place, const Measures& measures);

/// The way the film arrow points on the vehicle, seen on the table: "→" away from the free end.
std::string arrow_of(Turn turn);

/// "centre", "left", "right", "left + right".
std::string sides_text(Sides sides);
/// "center", "left", "right": for people; programs are told name_of(side).
std::string side_text(Side side);

/// A sentence about how the film may lie.
std::string direction_text(Direction direction);

/// A sentence, after a blank, of pieces whose panels may lie otherwise than the film; empty without
/// any.
std::string lying_otherwise(const Sheet& sheet);

/// "straight cuts, by hand" or "contour cuts, by plotter or template".
std::string by_text(CutBy by);

/// "left over 249 × 1512, flaw in it": as it lies in the hand.
std::string left_over_text(const FilmAway& film, const Roll& roll, const Measures& measures);

/// Unless it is among them.
void add_once(std::vector<std::string>& names, const std::string& name);
/// "a, b, c".
std::string listed(const std::vector<std::string>& names);
/// Rising numbers with runs drawn together: "1-3, 7".
std::string number_runs(const std::vector<int>& numbers);

} // namespace pelt::report
