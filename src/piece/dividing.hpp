// SPDX-License-Identifier: MIT
// The ways to divide a panel so that the film's width takes every part. Inside piece/ only.
#pragma once

#include "piece/panel_job.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace pelt::piece {

/// A seam between two parts of one panel, numbered from 1.
struct PanelSeam {
    int upper_part = 2;
    int under_part = 1;
    Um length = 0;
    bool added = false;
    SeamPlace place;
    std::size_t line = 0; ///< index among the lines that divide the panel, those always used first
};

/// A panel as its parts, those under others before those on top, and the seams between them.
struct DividedPanel {
    std::vector<Part> parts;
    std::vector<std::vector<CutShape>> shapes; ///< of every part
    std::vector<PanelSeam> seams;
    bool can_be_laid = true; ///< false: one is too narrow, or some lie over one another in a ring
};

/// The panel whole, or divided at its seam lines that are always used, where every part then fits.
/// Otherwise, if that is allowed, at the fewest of its other lines that do, of equal ones the first
/// in the file; else, if that is allowed, in strips where a fitter would have the seams. Where every
/// way is weighed, a few ways. None when nothing helps or a seam line is wrong: then
/// `faults` says so, with severity job or file. A warning where film lies double to the edge.
std::vector<DividedPanel> ways_to_divide(const PanelJob& job, Faults& faults);

} // namespace pelt::piece
