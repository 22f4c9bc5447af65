// SPDX-License-Identifier: MIT
#include "nest/contour/dual.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::nest::contour {
namespace {

// Shares carry rounding; each is taken this much smaller or larger, whichever gives the lower
// value.
constexpr double rounding = 1e-12;

double by_threshold(double share, double epsilon) {
    if (share > 1 - epsilon + rounding)
        return 1;
    return share < epsilon ? 0 : share;
}

// Exactly n of count + 1 parts would count n / (count + 1); one step less is below that.
double by_steps(double share, int count) {
    return std::max(0.0, std::floor((count + 1) * share - rounding * count)) / count;
}

double by_halves(double share, double epsilon) {
    const double whole = std::floor(1 / epsilon + rounding);
    if (share > 0.5 + rounding)
        return 1 - std::floor((1 - share) / epsilon + rounding) / whole;
    return share < epsilon ? 0 : 1 / whole;
}

} // namespace

double Dual::operator()(double share) const {
    switch (family) {
    case Family::threshold:
        return by_threshold(share, epsilon);
    case Family::steps:
        return std::min(1.0, by_steps(share, count));
    case Family::halves:
        return by_halves(share, epsilon);
    }
    return 0;
}

std::vector<Dual> duals() {
    std::vector<Dual> all{{Dual::Family::threshold, 0, 1}};
    for (int parts = 2; parts <= 24; ++parts)
        all.push_back({Dual::Family::threshold, 1.0 / parts, 1});
    for (int count = 1; count <= 12; ++count)
        all.push_back({Dual::Family::steps, 0, count});
    for (int parts = 2; parts <= 12; ++parts)
        all.push_back({Dual::Family::halves, 1.0 / parts, 1});
    return all;
}

} // namespace pelt::nest::contour
