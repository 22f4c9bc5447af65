// SPDX-License-Identifier: MIT
// The best small move against a handful of straight borders.
#pragma once

#include "nest/contour/vec.hpp"

#include <vector>

namespace pelt::nest::contour {

/// A neighbour seen from close by: a move `d` leaves a violation of short - dot(away, d), if that
/// is positive, at `weight` each micrometre.
struct Border {
    Vec away;
    double shortfall = 0;
    double weight = 1;
};

/// The move within `bounds` (which holds the null move) of least weighted violation, shortest
/// first among equals. Exact for these borders: such a minimum lies where two of them meet, or on
/// the foot of one.
Vec best_move(const std::vector<Border>& borders, const Span& bounds);

} // namespace pelt::nest::contour
