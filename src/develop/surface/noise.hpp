// SPDX-License-Identifier: MIT
// How rough a scan is. Inside develop/ only.
#pragma once

#include "model/surface.hpp"

namespace pelt::develop {

struct Roughness {
    double noise_mm = 0; ///< standard deviation of points from the surface through their neighbours
    double spacing_mm = 0; ///< mean length of an edge
};

/// A quadric is fitted to the two rings around inner points; the noise is the robust spread of what
/// points lie off: the root of the median mean square. Creases and edges are too few to weigh on
/// it. Looks at some five thousand points at most.
Roughness roughness_of(const Surface& surface);

} // namespace pelt::develop
