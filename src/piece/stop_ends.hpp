// SPDX-License-Identifier: MIT
// Where the line of a stop goes on beyond a corner, through the neighbours' tucks. Inside piece/
// only.
#pragma once

#include "geometry/grow.hpp"

#include <vector>

namespace pelt::piece {

/// A side of the outline with what is done at its edge, in millimetres.
struct WorkedSide {
    geometry::RingSide side;
    double move = 0;
    double stop = 0;
};

/// What a band takes beyond the corner where its run of stops ends.
struct BandEnd {
    double longer = 0;                     ///< how far the band itself goes on
    std::vector<std::vector<Point>> tucks; ///< of the neighbours, beyond the line; convex
};

/// Of the run that begins with side `first`, at its beginning; of one that ends with `last`, at its
/// end. The line of the stop goes straight on until it has left the tucks of the neighbours, and
/// takes from them all that lies beyond it. Where it runs out of them only farther from the corner
/// than twice the tuck and the stop together, or never, they are left as they are: the neighbour
/// runs on nearly the same way, and would lose its tuck.
BandEnd band_end_before(const std::vector<WorkedSide>& sides, std::size_t first);
BandEnd band_end_after(const std::vector<WorkedSide>& sides, std::size_t last);

/// Bands begin this far outside what they take from, so that rounding leaves no sliver there; mm.
inline constexpr double outside_mm = 0.002;

} // namespace pelt::piece
