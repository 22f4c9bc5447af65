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

/// The least stretch that a crown asks of the film. One-way crowns ask none. A round dome asks
/// arc/chord - 1: exact, J. Milnor, "A Problem in Cartography", Amer. Math. Monthly 76 (1969).
/// Everything else is the estimate c(A) |K| b² for a rectangle of the bows' lengths (b half the
/// shorter one, A their ratio), good to 10 % for circular bows; saddles alike, to first order.
StretchAsked stretch_of(const Bow& wide, const Bow& high, bool round_outline);

/// c(A) of the estimate, A >= 1.
double rectangle_factor(double aspect);

/// The same of film that lies down by itself: the largest stretch where its energy is least.
double natural_factor(double aspect);

/// That of a round dome, a the angle from its pole to its rim: closed form, see surface/README.md.
double natural_of_dome(double a);

} // namespace pelt::develop
