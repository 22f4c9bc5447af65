// SPDX-License-Identifier: MIT
// The seam lines of the vehicle file, placed on their panel. Inside piece/ only.
#pragma once

#include "piece/divide.hpp"
#include "piece/dividing.hpp"
#include "piece/panel_job.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace pelt::piece {

struct PlacedLine {
    Divide line;
    DividedPlane plane;
};

/// None when the lengthened line crosses itself.
std::optional<PlacedLine> place(const PanelJob& job, Divide line);

/// The file's lines, placed; those that cross themselves or leave the panel whole are faults.
struct FileLines {
    std::vector<PlacedLine> always;
    std::vector<PlacedLine> needed;
    std::vector<Place> always_at; ///< in the file
};
FileLines file_lines(const PanelJob& job, Faults& faults);

/// `line`: index among the lines that divide the panel.
bool has_a_seam_at(const DividedPanel& divided, std::size_t line);

/// The fault of such a line that divides nothing that the lines before it leave.
Fault divides_nothing(const FileLines& lines, std::size_t line, const PanelJob& job);

/// The film takes the parts, but no way of dividing leaves them as they can be laid.
Fault lines_in_the_way(const PanelJob& job);

/// Every line that is always used must leave a seam in the panel divided at those alone; a warning
/// where film lies double as far as the edge.
void check_always(const FileLines& lines, DividedPanel divided, const PanelJob& job,
                  Faults& faults);

} // namespace pelt::piece
