// SPDX-License-Identifier: MIT
// Where a panel that the film will not cover in one piece could be divided.
#pragma once

#include "model/polygon.hpp"

#include <array>
#include <vector>

namespace pelt {

/// A proposal; nothing is cut by it.
struct Division {
    enum class Kind { seam, relief };
    Kind kind = Kind::seam;
    int pieces = 1;
    int cuts = 0;               ///< straight ones
    double cut_mm = 0;          ///< seams or relief cuts together, along the panel
    double stretch_percent = 0; ///< the least possible of the piece that asks most
    bool own_lines = false;     ///< along the panel's own seam lines
    bool estimate = false;      ///< by the rule of strips, not tried on a scan
    /// On the blank, short stretches one beside the other; none for an estimate.
    std::vector<std::array<Point, 2>> lines = {};
};

} // namespace pelt
