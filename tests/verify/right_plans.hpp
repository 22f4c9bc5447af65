// SPDX-License-Identifier: MIT
// Right plans made by hand for the tests of the check: no stage of the program takes part.
#pragma once

#include "model/plan.hpp"

#include <cstdint>

namespace pelt::test {

/// A small generator of the tests' own (Lehmer, multiplier 48271 of Park and Miller, from memory).
class Dice {
public:
    explicit Dice(std::uint64_t seed) : state_(seed * 2 + 1) {}
    std::int64_t roll(std::int64_t low, std::int64_t high) {
        state_ = state_ * 48271 % 2147483647;
        return low + static_cast<std::int64_t>(state_ % static_cast<std::uint64_t>(high - low + 1));
    }

private:
    std::uint64_t state_;
};

struct RightPlan {
    Job job;
    Layout layout;
};

/// A vehicle of a few rectangular panels (some on both sides, some with copies), cut straight from
/// two rolls, each piece by its own crosscut, slit along the trim and along its upper side.
RightPlan straight_plan(Dice& dice);

/// The same vehicle cut by contour: hexagons in a row, exactly the gap apart.
RightPlan contour_plan(Dice& dice);

} // namespace pelt::test
