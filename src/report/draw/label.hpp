// SPDX-License-Identifier: MIT
// The label of one piece on the drawing: its number, its forward arrow, its name and sizes where
// there is room.
#pragma once

#include "report/draw/fit.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report::draw {

struct PieceLabel {
    std::string number;
    std::vector<std::string> lines;          ///< the first matters most; dropped from the end
    std::optional<double> forward_degrees{}; ///< against the clock from the film's arrow
};

/// Sizes to try, the largest first, in millimetres of the drawing.
struct LabelSizes {
    std::vector<double> with_lines; ///< of the number
    std::vector<double> alone;      ///< of a number by itself
    double line = 0.38;             ///< of a line, in terms of the number
};

/// How name and size stand to the number.
enum class LabelForm { below, beside, number_only };

/// A label that has found its place.
struct SetLabel {
    PieceLabel label;
    Box box;
    double size = 0;     ///< of the number
    double line = 0;     ///< of a line, in terms of the number
    bool turned = false; ///< reads upwards
    LabelForm form = LabelForm::number_only;
};

/// The most that fits: all lines in the largest size in which they do, then fewer, then the number
/// alone; none where not even a small number fits: such a piece gets a leader.
std::optional<SetLabel> set_label(const PieceLabel& label, const LabelSpace& space,
                                  const LabelSizes& sizes, const Letters& letters);

Picture picture_of(const SetLabel& set, const Letters& letters);

} // namespace pelt::report::draw
