// SPDX-License-Identifier: MIT
// A stretch that no layout goes below, to first order, from curvature and distance alone.
// Inside develop/ only.
#pragma once

#include "develop/surface/flatten.hpp"

#include <optional>

namespace pelt::develop {

/// |Sum of angle defect times distance to the outline| over the outline's length: to first order
/// every layout stretches by so much somewhere, where the outline is convex. For a disc it is J.
/// Milnor's bound. Distances by heat (K. Crane and others 2013). None where its equations cannot be
/// solved.
std::optional<double> roof_bound(const Sheet3& sheet, const Patch& patch);

/// The curvature of Gauss over the inside of the surface: the sum of angle defects.
double total_curvature(const Sheet3& sheet);

/// The same over the largest geodesic disc about the point farthest from the outline and
/// from openings: it holds whatever they are.
std::optional<double> disc_bound(const Sheet3& sheet, const Patch& patch);

} // namespace pelt::develop
