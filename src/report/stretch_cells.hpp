// SPDX-License-Identifier: MIT
// One panel as the picture of stretch shows it: its blank in greys, and how it bulges. Millimetres,
// y down, its upper left at (0, 0).
#pragma once

#include "report/area.hpp"

#include <array>
#include <string>
#include <vector>

namespace pelt::report {

inline constexpr int stretch_bands = 8;

/// Sizes that hold for the whole picture.
struct StretchScale {
    double full_percent = 1; ///< where the last grey ends
    double text = 12;        ///< size of the letters
    double line_height() const { return 1.4 * text; }
};

struct StretchCell {
    double width = 0;
    double height = 0;
    std::string svg;
};

/// Whether there is something to draw: a scan, or rises over a chord.
bool is_drawn(const PanelArea& row);

/// "mirror cap, left"
std::string panel_and_side(const PanelArea& row);

/// In lines no wider than this, broken at blanks.
std::vector<std::string> lines_within(const std::string& text, double width, double text_size);

/// A line of text whose foot is at y.
std::string svg_text_at(double x, double y, std::string_view text, double size,
                        std::string_view css_class = "");

/// Scanned: the stretch of every place. By tape: one grey for the estimate of the whole panel, and
/// the arcs of its rises, cut open beside it.
StretchCell stretch_cell(const PanelArea& row, std::optional<double> limit_percent,
                         const StretchScale& scale);

} // namespace pelt::report
