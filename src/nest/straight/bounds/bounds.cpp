// SPDX-License-Identifier: MIT
#include "nest/straight/bounds/bounds.hpp"

#include "nest/straight/bounds/weights.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::nest::straight {
namespace {

/// Above this the linear program takes too long for what it gains over the area.
constexpr std::size_t most_kinds = 150;
constexpr std::size_t pivots_per_kind = 12;

/// The rectangles do not overlap and lie within length times width.
Steps by_area(const std::vector<Demand>& demands, Steps width) {
    Int128 area = 0;
    for (const Demand& demand : demands)
        area += static_cast<Int128>(least_area(demand)) * static_cast<Int128>(demand.count);
    return static_cast<Steps>((area + width - 1) / width);
}

struct Line {
    Steps longest = 0; ///< the longest rectangle, lying as short as it can
    Steps behind = 0;  ///< of those wider than half the film
};

/// Rectangles wider than half the film, however they lie, all cross its middle line and so lie
/// one behind the other along it; each takes at least the shortest of its lengths.
Line by_middle_line(const std::vector<Demand>& demands, Steps width) {
    Line line;
    for (const Demand& demand : demands) {
        Steps least = demand.orientations.front().along;
        bool wide = true;
        for (const Orientation& orientation : demand.orientations) {
            least = std::min(least, orientation.along);
            wide = wide && 2 * orientation.across > width;
        }
        line.longest = std::max(line.longest, least);
        if (wide)
            line.behind += least * static_cast<Steps>(demand.count);
    }
    return line;
}

/// Lengths are whole steps, so the bound may be rounded up.
Steps by_weights(const std::vector<Demand>& demands, Steps width) {
    if (demands.size() > most_kinds)
        return 0;
    const Weights weights = best_weights(demands, width, pivots_per_kind * demands.size() + 10);
    return static_cast<Steps>(std::ceil(weights.length() * (1 - safety)));
}

} // namespace

Steps least_area(const Demand& demand) {
    Steps least = demand.orientations.front().area();
    for (const Orientation& orientation : demand.orientations)
        least = std::min(least, orientation.area());
    return least;
}

std::vector<Demand> demands_of(const Problem& problem) {
    std::vector<Demand> demands;
    for (const Kind& kind : problem.kinds)
        demands.push_back({kind.orientations, kind.demand()});
    return demands;
}

std::vector<Demand> turned(std::vector<Demand> demands) {
    for (Demand& demand : demands)
        for (Orientation& orientation : demand.orientations)
            std::swap(orientation.along, orientation.across);
    return demands;
}

Proof lower_bound(const std::vector<Demand>& demands, Steps width) {
    Proof best{0, "nothing to place"};
    const auto try_one = [&](Steps length, const char* argument) {
        if (length > best.length)
            best = {length, argument};
    };
    if (demands.empty())
        return best;
    const Line line = by_middle_line(demands, width);
    try_one(by_area(demands, width), "area");
    try_one(line.longest, "the longest piece");
    try_one(line.behind, "pieces wider than half the film lie one behind the other");
    try_one(by_weights(demands, width), "what fits side by side");
    return best;
}

} // namespace pelt::nest::straight
