// SPDX-License-Identifier: MIT
// How far a panel's drawing reaches. Inside order/ only.
#pragma once

#include "model/vehicle.hpp"

#include <optional>

namespace pelt::order {

/// As measured, in mm; of an outline by its corners and the points of its arcs.
struct Extents {
    Point low;
    Point high;
    double wide() const { return high.x - low.x; }
    double tall() const { return high.y - low.y; }
};

/// None: a scan, or nothing is drawn.
std::optional<Extents> extents_of(const Panel& panel);

} // namespace pelt::order
