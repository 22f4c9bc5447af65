// SPDX-License-Identifier: MIT
// A roll as it lies on the table: the free end on the left, the near edge below.
#pragma once

#include "report/draw/label.hpp"
#include "report/facts.hpp"
#include "report/numbers.hpp"

#include <map>
#include <string>
#include <vector>

namespace pelt::report::draw {

/// Film that falls away, and its size in words.
struct LeftOver {
    pelt::Box box;
    std::string words;
};

/// What part of a roll is drawn, how large, and how much its labels say.
struct RollView {
    Um from = 0; ///< along the roll; pieces beyond are cut off by the frame
    Um to = 0;
    double scale = 1;       ///< millimetres of the drawing a millimetre of film
    double width = 0;       ///< leaders may go so far to the right; at least to the film's end
    double type = 48;       ///< size of distances and other plain words
    LabelSizes labels = {}; ///< of pieces
    std::vector<double> cut_sizes = {};     ///< of a cut's number, the largest first; empty: none
    std::vector<int> cuts_numbered = {};    ///< which cuts have it; empty: all
    std::map<int, std::string> rulers = {}; ///< by cut: where the ruler is set for it
    std::vector<LeftOver> left_over = {};
    bool says_sizes = true;     ///< labels have names and sizes; else they are numbers only
    bool says_finished = false; ///< sizes as finished too
};

/// The whole of a used roll in true millimetres.
RollView in_true_size(Um length);

/// Labels lie inside their pieces and over no other; where there is no room a leader joins a number
/// above the roll to its piece.
Picture roll_picture(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                     std::size_t used_roll, const Measures& measures, const RollView& view,
                     const Letters& letters);

/// How much wider than its film such a picture is at least.
double room_beside_roll(const RollView& view);

} // namespace pelt::report::draw
