// SPDX-License-Identifier: MIT
// The linear program of bars by column generation; the bound that holds before the end: Farley
// 1990, Oper. Res. 38.
#include "nest/straight/bounds/program.hpp"
#include "nest/straight/bounds/weights.hpp"

namespace pelt::nest::straight {
namespace {

Program::Column column_of(const std::vector<SideBySide>& pattern,
                          const std::vector<Demand>& demands) {
    Program::Column column(demands.size(), 0.0);
    for (const SideBySide& side : pattern)
        column[side.demand] +=
            static_cast<double>(side.count) /
            static_cast<double>(demands[side.demand].orientations[side.orientation].along);
    return column;
}

} // namespace

Weights best_weights(const std::vector<Demand>& demands, Steps width, std::size_t pivots) {
    Weights best = weigh(demands, width, area_weights(demands));
    Program program(demands, width);
    for (std::size_t i = 0; i < pivots; ++i) {
        std::vector<SideBySide> pattern;
        Weights now = weigh(demands, width, program.weights(), &pattern);
        const bool at_the_end = now.most.back() < 1 + 1e-7;
        if (now.length() > best.length())
            best = std::move(now);
        if (at_the_end || !program.pivot(column_of(pattern, demands)))
            break;
    }
    return best;
}

} // namespace pelt::nest::straight
