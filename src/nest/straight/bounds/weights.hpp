// SPDX-License-Identifier: MIT
// The argument behind most bounds here. Give every rectangle a weight c and spread it evenly over
// its length: one step of length then carries c / length. Across the film, at any place along it,
// lie rectangles that fit side by side, so the film carries at most `most(width)` a step, the
// greatest weight of rectangles that fit. Hence length >= sum of weights / most(width).
// With c = area this is the area bound; the best weights are the duals of the linear program of
// bars (Scheithauer 1999; Belov, Kartak, Rohling & Scheithauer 2013, doi
// 10.1007/s10288-012-0206-8), as any weights are valid. A rectangle that may be turned has one
// weight and spreads it over the length that it happens to have, so turns are covered.
#pragma once

#include "nest/straight/bounds/bounds.hpp"

namespace pelt::nest::straight {

/// Rounding of sums of doubles is far below this share; bounds give it away.
inline constexpr double safety = 1e-9;

struct Weights {
    std::vector<double> each; ///< by demand: of one rectangle
    std::vector<double> most; ///< by width 0 … usable: greatest weight a step
    Steps grain = 1;          ///< widths are counted in this many steps, rounded down
    double total = 0;         ///< of all rectangles
    double most_within(Steps width) const { return most[static_cast<std::size_t>(width / grain)]; }
    double length() const { return most.back() > 0 ? total / most.back() : 0; }
};

/// Which rectangles lie side by side: by demand and lie, how many.
struct SideBySide {
    std::size_t demand = 0;
    std::size_t orientation = 0;
    std::size_t count = 0;
};

/// Fills in `most` and `total` for the given weights. When `best` is asked for, it gets one
/// greatest choice for the whole width.
Weights weigh(const std::vector<Demand>& demands, Steps width, std::vector<double> each,
              std::vector<SideBySide>* best = nullptr);

/// Weights equal to the areas (of the smallest lie).
std::vector<double> area_weights(const std::vector<Demand>& demands);

/// The best weights that up to `pivots` steps of the simplex method find.
Weights best_weights(const std::vector<Demand>& demands, Steps width, std::size_t pivots);

} // namespace pelt::nest::straight
