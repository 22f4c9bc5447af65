// SPDX-License-Identifier: MIT
// How a rise is measured, drawn: the surface cut open and the straightedge on it. Panel frame, mm.
#pragma once

#include "model/vehicle.hpp"

#include <vector>

namespace pelt::report {

struct CrownLine {
    Point from;
    Point way; ///< (1, 0) over the width, (0, 1) over the height
    double chord = 0;
    double rise = 0; ///< not 0; below 0: the panel is hollow
};

/// All lie on the far side of the line as seen from the panel.
struct CrownSection {
    std::vector<Point> arc;
    std::vector<Point> straightedge;
    std::vector<std::vector<Point>> gaps; ///< that are the rise
};

/// On a bulge the straightedge touches the middle, and the gaps at its two ends are alike; in a
/// hollow it rests on both ends, and the gap is in the middle.
CrownSection crown_section(const CrownLine& line);

} // namespace pelt::report
