// SPDX-License-Identifier: MIT
// Which way a surface faces, and whether it bulges that way.
#pragma once

#include "model/surface.hpp"

namespace pelt::geometry {

/// How a surface lies in space as seen from outside.
struct Facing {
    Point3 normal;    ///< of length 1: the way it faces on the whole
    double share = 0; ///< of its area that the way is worth: 1 where it is plane, 0 all round
    /// How far it stands out before its rim's middle, mean, in shares of the root of its area;
    /// below 0 it is hollow, as a bulging surface is that was turned inside out.
    double bulge = 0;
};
Facing facing_of(const Surface& surface);

/// Its inside becomes its outside.
void turn_inside_out(Surface& surface);

} // namespace pelt::geometry
