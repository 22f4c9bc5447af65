// SPDX-License-Identifier: MIT
#include "nest/straight/bounds.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

/// The rectangles do not overlap and lie within length times width.
Steps by_area(const std::vector<Demand>& demands, Steps width) {
    Int128 area = 0;
    for (const Demand& demand : demands) {
        Steps least = demand.lies.front().area();
        for (const Lie& lie : demand.lies)
            least = std::min(least, lie.area());
        area += static_cast<Int128>(least) * static_cast<Int128>(demand.count);
    }
    return static_cast<Steps>((area + width - 1) / width);
}

/// Rectangles wider than half the film, however they lie, all cross its middle line and so lie
/// one behind the other along it; each takes at least the shortest of its lengths.
Steps by_middle_line(const std::vector<Demand>& demands, Steps width) {
    Steps sum = 0;
    Steps longest = 0;
    for (const Demand& demand : demands) {
        Steps least = demand.lies.front().along;
        bool wide = true;
        for (const Lie& lie : demand.lies) {
            least = std::min(least, lie.along);
            wide = wide && 2 * lie.across > width;
        }
        longest = std::max(longest, least);
        if (wide)
            sum += least * static_cast<Steps>(demand.count);
    }
    return std::max(sum, longest);
}

} // namespace

Proof lower_bound(const std::vector<Demand>& demands, Steps width) {
    if (demands.empty())
        return {0, "nothing to place"};
    const Steps area = by_area(demands, width);
    const Steps line = by_middle_line(demands, width);
    if (line > area)
        return {line, "pieces wider than half the film lie one behind the other"};
    return {area, "area"};
}

} // namespace pelt::nest::straight
