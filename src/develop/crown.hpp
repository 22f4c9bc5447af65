// SPDX-License-Identifier: MIT
// Bows over a straight measure, and what a panel bowed both ways asks of the film. Millimetres.
// Inside develop/ only.
#pragma once

#include "model/blank.hpp"

#include <optional>

namespace pelt::develop {

/// A circular bow: its chord, the length along it, and its curvature, which has the rise's sign.
struct Bow {
    double chord = 0;
    double arc = 0;
    double curvature = 0;
};

/// Over a chord > 0 with a rise of either sign: R = (c² + 4h²)/(8|h|), arc 4 R atan(2|h|/c).
/// Source: Machinery's Handbook, 31st edition (2020), page 83.
Bow bow_over(double chord, double rise);

/// The bow whose length along it is given; none where no bow of that length rises so far.
std::optional<Bow> bow_along(double arc, double rise);

/// What encloses a crowned panel, laid flat. Anything but an ellipse counts as the rectangle around
/// it, which asks no less.
enum class Rim { any, ellipse, circle };

/// The stretch that a crown asks of the film: the least, and that of film lying by itself. One-way
/// crowns ask none. A round dome of the same rise both ways asks arc/chord - 1: exact, J. Milnor,
/// "A Problem in Cartography", Amer. Math. Monthly 76 (1969). Everything else is the estimate
/// c |K| b² (b half the shorter bow, c by the ratio of the two), whose margin
/// surface/README.md has.
StretchAsked stretch_of(const Bow& wide, const Bow& high, Rim rim);

/// The factors c of the estimate, aspect >= 1. `bound` is what no layout goes below, to first
/// order.
struct Factors {
    double least = 0;
    double natural = 0;
    double bound = 0;
};
Factors factors_of(Rim rim, double aspect, bool saddle);

/// The natural stretch of a round dome, a the angle from its pole to its rim: closed form, see
/// surface/README.md.
double natural_of_dome(double a);

} // namespace pelt::develop
