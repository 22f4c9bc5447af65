// SPDX-License-Identifier: MIT
// Where many pieces are alike, good neighbours come again: a place for an item beside another one,
// as one of its own kind lies beside one of the other's kind elsewhere.
#pragma once

#include "nest/contour/scene.hpp"
#include "nest/random.hpp"

#include <optional>
#include <vector>

namespace pelt::nest::contour {

class Alike {
public:
    explicit Alike(const Problem& problem);

    /// Whether there is anything to copy for an item.
    bool helps(std::size_t item) const { return count_[problem_->items[item]] > 1; }

    /// A place copied from elsewhere, quarter turns of the pair included; none when the draw found
    /// nothing to copy, or no room before `end`.
    std::optional<Pose> place(const Scene& scene, std::size_t item, double end,
                              Random& random) const;

private:
    struct Pair {
        Pose own;   // of an item of the same kind
        Pose other; // what it lies beside
        std::size_t other_item = 0;
    };
    std::optional<Pair> draw_pair(const Scene& scene, std::size_t item, Random& random) const;
    std::size_t draw_like(std::size_t item, Random& random) const;
    std::optional<std::uint32_t> turned_option(std::uint32_t option, int quarters,
                                               const Kind& kind) const;

    const Problem* problem_;
    std::vector<std::uint32_t> first_; // item of every kind
    std::vector<std::uint32_t> count_;
};

} // namespace pelt::nest::contour
