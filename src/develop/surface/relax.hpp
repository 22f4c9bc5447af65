// SPDX-License-Identifier: MIT
// Layouts that keep lengths on the whole, and layouts that keep every length within limits.
// Inside develop/ only.
#pragma once

#include "develop/surface/patch.hpp"

#include <optional>

namespace pelt::develop {

/// As rigid as possible (L. Liu and others 2008): the least sum of area times
/// (s1 - 1)² + (s2 - 1)², by turns of the nearest rotation of every triangle and the layout nearest
/// to those, until a round gains less than `settled` of the energy. It may turn triangles over.
struct Rigid {
    Flat flat;
    double energy = 0; ///< divided by the area
};
Rigid as_rigid_as_possible(const Patch& patch, const Flat& start, double settled = 1e-9);

/// The layout in which the largest and the smallest factor lie closest together, hence the least
/// stretch anywhere: alternating direction method of multipliers on exp(-t) <= s2 <= s1 <= 1.
/// Scaled so that nothing is longer than on the surface.
struct Least {
    Flat flat;
    double stretch = 0;  ///< of the layout: the largest film stretch minus 1
    double estimate = 0; ///< from the other side; the two close in on one another
};
/// `start` turns nothing over.
Least least_stretch(const Patch& patch, const Flat& start);

/// How film lies down by itself: the layout of least elastic energy among those with
/// 1 / (1 + limit) <= s2 <= s1 <= 1, the energy that of as_rigid_as_possible. `met` is false where
/// the limits were missed by more than 1e-4: then the limit is too near to the least possible.
struct Drape {
    Flat flat;
    double stretch = 0; ///< the largest
    double mean = 0;    ///< of every triangle's larger stretch, by area
    bool met = false;
};
Drape drape(const Patch& patch, const Flat& start, double limit);

} // namespace pelt::develop
