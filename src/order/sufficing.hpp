// SPDX-License-Identifier: MIT
// How much film suffices for a vehicle whose length is only known by draws. Inside order/ only.
#pragma once

#include "order/draws.hpp"

#include <optional>
#include <vector>

namespace pelt::order {

/// The value that so many of 100 draws do not exceed (the least of them, of the sorted draws);
/// none where that is a draw with a panel that no roll takes.
std::optional<Um> percentile(const std::vector<Draw>& draws, double percent);

/// The chance that a length suffices: over the draws, and over how often pieces of each are
/// spoilt, exactly. Lengths go in steps of `step`; a draw's own is taken `times` so long.
class Sufficing {
public:
    Sufficing(const std::vector<Draw>& draws, Um step, double times);

    double chance(Um length) const;
    /// The least length that suffices with a probability; none: no length does.
    std::optional<Um> least(double probability) const;

private:
    /// A draw: its length, and the probability that so many steps more suffice.
    struct Needed {
        Um length = 0;
        std::vector<double> enough;
        double with(Um film, Um step) const;
    };

    std::size_t draws_;
    Um step_;
    std::vector<Needed> needed_;
};

} // namespace pelt::order
