// SPDX-License-Identifier: MIT
// Random simple polygons, the same on every machine. Millimetres. For tests only.
#pragma once

#include "model/polygon.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace pelt::test {

/// SplitMix64: G. Steele, D. Lea, C. Flood, OOPSLA 2014 (constants from memory).
class Dice {
public:
    explicit Dice(std::uint64_t seed) : state_(seed) {}

    std::uint64_t next() {
        std::uint64_t z = (state_ += 0x9e3779b97f4a7c15U);
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
        return z ^ (z >> 31U);
    }
    /// low <= value <= high.
    int whole(int low, int high) {
        return low + static_cast<int>(next() % static_cast<std::uint64_t>(high - low + 1));
    }
    /// low <= value < high.
    double real(double low, double high) {
        return low + (high - low) * static_cast<double>(next() >> 11U) * 0x1p-53;
    }

private:
    std::uint64_t state_;
};

/// A star-shaped ring, counter-clockwise: simple, seldom convex.
inline std::vector<Point> star(Dice& dice, int points, double least, double most, Point centre) {
    std::vector<double> angles;
    for (int i = 0; i < points; ++i)
        angles.push_back((i + dice.real(0.1, 0.9)) * 2 * 3.141592653589793 / points);
    std::vector<Point> ring;
    for (const double angle : angles) {
        const double r = dice.real(least, most);
        ring.push_back({centre.x + r * std::cos(angle), centre.y + r * std::sin(angle)});
    }
    return ring;
}

/// A convex ring, counter-clockwise: points of an ellipse.
inline std::vector<Point> convex(Dice& dice, int points, double wide, double high) {
    std::vector<Point> ring;
    for (int i = 0; i < points; ++i) {
        const double angle = (i + dice.real(0.1, 0.9)) * 2 * 3.141592653589793 / points;
        ring.push_back({wide * std::cos(angle), high * std::sin(angle)});
    }
    return ring;
}

} // namespace pelt::test
