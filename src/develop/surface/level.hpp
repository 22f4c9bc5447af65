// SPDX-License-Identifier: MIT
// How high to fill: one number that weighs many small ones against a price. Inside develop/ only.
#pragma once

#include <vector>

namespace pelt::develop {

/// A value and its weight.
struct Weighed {
    double value = 0;
    double weight = 0;
};

/// The root of: sum of weight times (low - value), where that is above 0, = cost / low, between
/// `least` and 1; 1 where it lies higher. `guess`: where it is likely to be. Halves what is left of
/// the values at every step, so it takes time in their number. Their order is lost.
double balanced_low(std::vector<Weighed>& values, double cost, double guess);

} // namespace pelt::develop
