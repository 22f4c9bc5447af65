// SPDX-License-Identifier: MIT
// Dual feasible functions: ways to weigh shares of a whole so that shares which fit into the whole
// together never weigh more than the whole.
#pragma once

#include <vector>

namespace pelt::nest::contour {

/// One member of a family. All of them map [0, 1] into [0, 1], do not fall, and keep any sum of
/// arguments of at most 1 at most 1 (Fekete and Schepers 2004, arXiv cs/0402044, theorems on
/// u^(k), U^(epsilon) and phi^(epsilon), from memory; tests/nest/contour tries them at random).
struct Dual {
    enum class Family {
        threshold, ///< less than `epsilon` counts nothing, more than 1 - epsilon everything
        steps,     ///< rounded up to a `count`-th, a little less than `count` + 1 of them fill
        halves,    ///< what is over a half pays for all that cannot lie beside it
    };
    Family family = Family::threshold;
    double epsilon = 0;
    int count = 1;

    double operator()(double share) const;
};

/// The members worth trying, the plain share (threshold 0) first.
std::vector<Dual> duals();

} // namespace pelt::nest::contour
