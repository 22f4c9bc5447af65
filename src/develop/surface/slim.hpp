// SPDX-License-Identifier: MIT
// The layout that never turns a triangle over. Inside develop/ only.
#pragma once

#include "develop/surface/patch.hpp"

namespace pelt::develop {

/// The least symmetric Dirichlet energy, the sum of area times s1² + s2² + 1/s1² + 1/s2² - 4
/// (J. Smith, S. Schaefer 2015), by weighted nearest layouts (M. Rabinovich and others 2017). From
/// a start that turns nothing over it never does: steps end short of the first triangle to close.
struct Symmetric {
    Flat flat;
    double energy = 0; ///< divided by the area
    int rounds = 0;
};
Symmetric least_symmetric(const Patch& patch, const Flat& start);

} // namespace pelt::develop
