// SPDX-License-Identifier: MIT
// How much each pair of overlapping items matters: guided local search raises what stays in
// conflict, so that it is resolved even at others' expense. How weights rise and fade follows
// Gardeyn, Vanden Berghe & Wauters 2025, arXiv:2509.13329.
#pragma once

#include <algorithm>
#include <cstdint>
#include <vector>

namespace pelt::nest::contour {

/// Weights of pairs, 1 unless raised. Only raised ones are stored, each with both of its items.
class Weights {
public:
    explicit Weights(std::size_t items) : raised_(items) {}

    struct Raised {
        std::uint32_t other = 0;
        float weight = 1;
        bool fresh = false; ///< raised since the last `decay`
    };
    const std::vector<Raised>& raised(std::size_t item) const { return raised_[item]; }

    double at(std::size_t a, std::size_t b) const {
        for (const Raised& entry : raised_[a])
            if (entry.other == b)
                return entry.weight;
        return 1;
    }

    void raise(std::size_t a, std::size_t b, float factor) {
        raise_one(a, b, factor);
        raise_one(b, a, factor);
    }

    /// Lowers every weight that was not raised since the last call.
    void decay(float factor) {
        for (std::vector<Raised>& list : raised_) {
            for (Raised& entry : list) {
                if (!entry.fresh)
                    entry.weight *= factor;
                entry.fresh = false;
            }
            std::erase_if(list, [](const Raised& entry) { return entry.weight <= 1; });
        }
    }

    void reset() {
        for (std::vector<Raised>& list : raised_)
            list.clear();
    }

private:
    void raise_one(std::size_t a, std::size_t b, float factor) {
        std::vector<Raised>& list = raised_[a];
        auto entry = std::find_if(list.begin(), list.end(),
                                  [b](const Raised& known) { return known.other == b; });
        if (entry == list.end())
            entry = list.insert(list.end(), {static_cast<std::uint32_t>(b), 1, true});
        entry->weight = std::min(entry->weight * factor, heaviest);
        entry->fresh = true;
    }

    static constexpr float heaviest = 1e12F;
    std::vector<std::vector<Raised>> raised_;
};

} // namespace pelt::nest::contour
