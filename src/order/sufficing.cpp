// SPDX-License-Identifier: MIT
#include "order/sufficing.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::order {
namespace {

constexpr double as_good_as_sure = 1 - 1e-9;
constexpr Um most_spare = 1'000'000 * um_per_mm; // a chance near 1 ends it long before

Um times_as_long(Um length, double times) {
    return std::llround(static_cast<double>(length) * times);
}

} // namespace

std::optional<Um> percentile(const std::vector<Draw>& draws, double percent) {
    std::vector<Um> lengths;
    for (const Draw& draw : draws)
        if (draw.length)
            lengths.push_back(*draw.length);
    std::sort(lengths.begin(), lengths.end());
    const double all = static_cast<double>(draws.size());
    const auto rank = static_cast<std::size_t>(std::ceil(percent / 100 * all - 1e-9));
    const std::size_t index = std::max<std::size_t>(rank, 1) - 1;
    return index < lengths.size() ? std::optional(lengths[index]) : std::nullopt;
}

double Sufficing::Needed::with(Um film, Um step) const {
    if (film < length)
        return 0;
    const auto spare = static_cast<std::size_t>((film - length) / step);
    return enough[std::min(spare, enough.size() - 1)];
}

Sufficing::Sufficing(const std::vector<Draw>& draws, Um step, double times)
    : draws_(draws.size()), step_(step) {
    for (const Draw& draw : draws) {
        if (!draw.length)
            continue;
        Needed& needed = needed_.emplace_back();
        needed.length = times_as_long(*draw.length, times);
        SpoiltFilm spoilt(draw.remakes, step);
        needed.enough.push_back(spoilt.probability());
        while (needed.enough.back() < as_good_as_sure && spoilt.film() < most_spare) {
            spoilt.go_on();
            needed.enough.push_back(spoilt.probability());
        }
    }
}

double Sufficing::chance(Um length) const {
    double sum = 0;
    for (const Needed& needed : needed_)
        sum += needed.with(length, step_);
    return draws_ == 0 ? 0 : sum / static_cast<double>(draws_);
}

std::optional<Um> Sufficing::least(double probability) const {
    Um high = step_;
    for (const Needed& needed : needed_)
        high = std::max(high, needed.length +
                                  static_cast<Um>(needed.enough.size()) * step_);
    Um steps = (high + step_ - 1) / step_;
    if (chance(steps * step_) < probability)
        return std::nullopt;
    Um too_few = 0;
    while (steps - too_few > 1) {
        const Um middle = too_few + (steps - too_few) / 2;
        (chance(middle * step_) < probability ? too_few : steps) = middle;
    }
    return steps * step_;
}

} // namespace pelt::order
