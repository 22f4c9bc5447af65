// SPDX-License-Identifier: MIT
// The label of one piece on the drawing: its number, its forward arrow, its name and size where
// there is room.
#pragma once

#include "report/svg_fit.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report {

struct PieceLabel {
    std::string number;
    std::vector<std::string> lines; ///< name and size; dropped where there is no room
    double forward_degrees = 0;     ///< counter-clockwise from the film's arrow
};

/// How name and size stand to the number.
enum class LabelForm { below, beside, number_only };

/// A label that has found its place.
struct SetLabel {
    PieceLabel label;
    SvgBox box;
    double size = 0;     ///< height of the number
    bool turned = false; ///< reads upwards
    LabelForm form = LabelForm::number_only;
};

/// The largest that fits, with name and size if those stay readable; none where not even a small
/// number fits: such a piece gets a leader.
std::optional<SetLabel> set_label(const PieceLabel& label, const LabelSpace& space);

std::string svg_of(const SetLabel& set);
/// An arrow of this length around its middle.
std::string svg_arrow(double x, double y, double length, double degrees);

} // namespace pelt::report
