// SPDX-License-Identifier: MIT
#include "develop/surface/level.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::develop {
namespace {

constexpr double lowest = .05;

/// What lies below the root for certain: sums of weights and of weights times values.
struct Below {
    double weight = 0;
    double moment = 0;
    void add(const Weighed& w) {
        weight += w.weight;
        moment += w.weight * w.value;
    }
    bool is_short_of(double low, double cost) const { return weight * low - moment < cost / low; }
};

/// Like std::partition, whose order afterwards is the library's own: sums follow it.
using At = std::vector<Weighed>::iterator;
At parted(At first, At end, double pivot) {
    for (;;) {
        while (first != end && first->value < pivot)
            ++first;
        do {
            if (first == end)
                return first;
            --end;
        } while (!(end->value < pivot));
        std::swap(*first++, *end);
    }
}

} // namespace

double balanced_low(std::vector<Weighed>& values, double cost, double guess) {
    double low = lowest;
    double high = 1;
    Below below;
    auto first = values.begin(); // of those between low and high
    auto end = values.end();
    // Brackets around the guess first, each way wider and wider; then halves.
    double step = 1e-3 * guess;
    double pivot = guess - step;
    bool bracketed = false;
    while (first != end) {
        if (!(pivot > low && pivot < high) || bracketed)
            pivot = (low + high) / 2;
        if (!(pivot > low && pivot < high))
            break;
        const At middle = parted(first, end, pivot);
        Below more = below;
        for (auto it = first; it != middle; ++it)
            more.add(*it);
        const bool higher = more.is_short_of(pivot, cost);
        if (higher) {
            low = pivot;
            below = more;
            first = middle;
        } else {
            high = pivot;
            end = middle;
        }
        bracketed = bracketed || (high < 1 && low > lowest);
        step *= 4;
        pivot = higher ? low + step : high - step;
    }
    if (!(below.weight > 0))
        return std::min(high, 1.0);
    // weight low² - moment low - cost = 0
    const double root =
        (below.moment + std::sqrt(below.moment * below.moment + 4 * below.weight * cost)) /
        (2 * below.weight);
    return std::clamp(root, low, high);
}

} // namespace pelt::develop
