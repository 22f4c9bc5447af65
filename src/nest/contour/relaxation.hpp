// SPDX-License-Identifier: MIT
// Moves all items at once, a little, to be rid of small overlaps.
#pragma once

#include "nest/contour/scene.hpp"

#include <cstdint>
#include <vector>

namespace pelt::nest::contour {

/// Lessens the sum of squared violations over all positions together, by projected gradient steps
/// whose length follows from the last two (Barzilai and Borwein 1988, "Two-point step size
/// gradient methods", from memory). Sees at once what one item after another cannot: a row of
/// pieces that must all give way.
class Relaxation {
public:
    explicit Relaxation(const Problem& problem);

    /// True when no violation is left before `end`; `poses` then hold the result, else rubbish.
    bool run(std::vector<Pose>& poses, double end, int most_steps);

    std::uint64_t work() const { return work_; }

    /// Asks for this much more than every gap; `most_margin_um` at most, less a micrometre.
    void keep_margin(double um) { margin_ = um; }

private:
    struct Pair {
        std::uint32_t a = 0;
        std::uint32_t b = 0;
        double b_on = 0; // how far along b's repeat lies that is meant
    };
    void find_pairs(const std::vector<Pose>& poses, double end);
    double evaluate(const std::vector<Pose>& poses, std::vector<Vec>& downhill);

    const Problem* problem_;
    Scene scene_;
    double ahead_ = 0;
    double margin_ = 0;
    std::vector<Pair> pairs_;
    std::uint64_t work_ = 0;
};

} // namespace pelt::nest::contour
