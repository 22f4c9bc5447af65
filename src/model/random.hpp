// SPDX-License-Identifier: MIT
// Our own generator, so that every standard library gives the same numbers.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

namespace pelt {

/// A counter whose steps are mixed by multiply and shift (Steele, Lea & Flood 2014, "Fast splittable
/// pseudorandom number generators", OOPSLA; the mixing is Stafford's variant 13, 2011; both from
/// memory). Passes as noise; not for secrets.
class Random {
public:
    explicit Random(std::uint64_t seed) : state_(seed) {}

    std::uint64_t bits() {
        state_ += 0x9e3779b97f4a7c15U;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
        return z ^ (z >> 31U);
    }

    /// In [0, 1), a multiple of 2^-53.
    double unit() { return static_cast<double>(bits() >> 11U) * 0x1p-53; }

    double between(double low, double high) { return low + (high - low) * unit(); }

    /// In 0 … count - 1; count is small against 2^32, so the bias is nothing.
    std::size_t below(std::size_t count) {
        return static_cast<std::size_t>(((bits() >> 32U) * count) >> 32U);
    }

    template <class T>
    void shuffle(std::vector<T>& values) {
        for (std::size_t i = values.size(); i > 1; --i)
            std::swap(values[i - 1], values[below(i)]);
    }

private:
    std::uint64_t state_;
};

} // namespace pelt
