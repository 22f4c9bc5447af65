// SPDX-License-Identifier: MIT
// How tightly the edges of a ring are bent. Inside piece/ only.
#pragma once

#include "model/blank.hpp"

#include <limits>
#include <vector>

namespace pelt::piece {

/// How tightly a ring is bent at its tightest, on either side of straight. Radii in mm; infinite
/// where it is straight.
struct Bend {
    double hollow = std::numeric_limits<double>::infinity();
    double bulging = std::numeric_limits<double>::infinity();
};

/// Of each edge of the ring, over the width of its tuck (mm; 0: not asked for). Corners are not
/// bends: film is cut in there.
std::vector<Bend> bends_of(const TaggedRing& ring, std::vector<double> width);

} // namespace pelt::piece
