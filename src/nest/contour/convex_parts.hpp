// SPDX-License-Identifier: MIT
// A polygon with holes cut into convex parts.
#pragma once

#include "model/polygon.hpp"

#include <vector>

namespace pelt::nest::contour {

/// Convex rings, counter-clockwise, without repeated or collinear points, whose union is the
/// polygon. Where the polygon is too odd to cut (it touches itself), its hull: never less than the
/// polygon. Coordinates below 2^30 in size.
std::vector<Ring> convex_parts(const Polygon& polygon);

/// A shape as a union of convex parts, and the same shape's rings, the region on their left.
struct Body {
    std::vector<Ring> parts;
    std::vector<Ring> rings;
};
Body body_of(const Polygon& polygon);

} // namespace pelt::nest::contour
