// SPDX-License-Identifier: MIT
// First layouts, from which the better ones start. Inside develop/ only.
#pragma once

#include "develop/surface/patch.hpp"

#include <optional>

namespace pelt::develop {

/// As seen from outside, square to the way it faces on the whole, scaled to fit lengths best. None
/// unless every triangle faces within 60 degrees of that way.
std::optional<Flat> seen_from_outside(const Patch& patch, const std::vector<Point3>& points);

/// The least-squares conformal layout (B. Lévy and others 2002): least sum of area times |w|² with
/// the two ends of the surface held, scaled to fit lengths best. It may turn triangles over. None
/// where its equations cannot be solved. `loop`: the outline.
std::optional<Flat> conformal(const Patch& patch, const std::vector<Point3>& points,
                              const std::vector<int>& loop);

/// Every inner point at the mean of its neighbours, the outline on a circle of the surface's area
/// (W. T. Tutte 1963): turns no triangle over. None where its equations cannot be solved.
std::optional<Flat> on_a_disc(const Patch& patch, const std::vector<Point3>& points,
                              const std::vector<int>& loop);

} // namespace pelt::develop
