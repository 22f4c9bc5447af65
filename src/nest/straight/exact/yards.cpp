// SPDX-License-Identifier: MIT
#include "nest/straight/exact/yards.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::nest::straight {
Yards::Yards(const std::vector<Demand>& demands, Steps width, Steps length,
             const std::vector<std::vector<double>>& weights)
    : width_(width), length_(length), spare_(width * length) {
    for (const Demand& demand : demands) {
        areas_.push_back(least_area(demand));
        spare_ -= areas_.back() * static_cast<Steps>(demand.count);
    }
    const std::vector<Demand> other_way = turned(demands);
    along_.push_back(weigh(demands, width, area_weights(demands)));
    across_.push_back(weigh(other_way, length, area_weights(demands)));
    for (const std::vector<double>& each : weights) {
        along_.push_back(weigh(demands, width, each));
        across_.push_back(weigh(other_way, length, each));
    }
}

void Yards::measure(const States& states, State s, Rest& rest) const {
    rest.weight.assign(along_.size(), 0.0);
    for (std::size_t i = 0; i < along_.size(); ++i) {
        rest.weight[i] = along_[i].total;
        for (std::size_t k = 0; k < states.kinds(); ++k)
            rest.weight[i] -= static_cast<double>(states.copies(s, k)) * along_[i].each[k];
    }
    rest.area = 0;
    for (std::size_t k = 0; k < states.kinds(); ++k)
        rest.area += static_cast<Steps>(states.copies(s, k)) * areas_[k];
    rest.length = 0;
    for (std::size_t i = 0; i < along_.size(); ++i)
        if (along_[i].most.back() > 0)
            rest.length = std::max(
                rest.length, static_cast<Steps>(std::ceil(
                                 rest.weight[i] / along_[i].most.back() * (1 - safety) - safety)));
}

bool Yards::may_hold(const Rest& rest, Steps along, Steps across) const {
    if (along > length_ || across > width_)
        return false;
    for (std::size_t i = 0; i < along_.size(); ++i) {
        const double beside = static_cast<double>(along) * along_[i].most_within(width_ - across) +
                              static_cast<double>(length_ - along) * along_[i].most.back();
        if (rest.weight[i] > beside * (1 + safety))
            return false;
        const double behind =
            static_cast<double>(across) * across_[i].most_within(length_ - along) +
            static_cast<double>(width_ - across) * across_[i].most.back();
        if (rest.weight[i] > behind * (1 + safety))
            return false;
    }
    return by_areas(rest, along, across);
}

bool Yards::by_areas(const Rest& rest, Steps along, Steps across) const {
    const double beside =
        static_cast<double>(width_ - across) - along_[0].most_within(width_ - across);
    const double behind =
        static_cast<double>(length_ - along) - across_[0].most_within(length_ - along);
    const double lost = static_cast<double>(along) * beside + static_cast<double>(across) * behind;
    const double left = static_cast<double>(width_) * static_cast<double>(length_) -
                        static_cast<double>(along) * static_cast<double>(across);
    return rest.weight[0] <= (left - lost) * (1 + safety);
}

} // namespace pelt::nest::straight
