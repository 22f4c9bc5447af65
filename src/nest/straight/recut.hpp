// SPDX-License-Identifier: MIT
// Shortens a layout by cutting a few of its sections anew, in the best of all ways: exact search
// as the neighbourhood of a local search.
#pragma once

#include "nest/random.hpp"
#include "nest/straight/block.hpp"

#include <optional>

namespace pelt::nest::straight {

struct Recut {
    std::vector<std::size_t> sections; ///< of one stretch, to be replaced, in rising order
    std::vector<Block> by;
    Steps saved = 0;
};

/// Tries some sections of one stretch, chosen at random, until about `work` ways to put two parts
/// together were looked at; gives the first choice that becomes shorter. Takes what it did off
/// `work`.
std::optional<Recut> find_recut(const Problem& problem, const Filled& filled, Random& random,
                                std::int64_t& work);

/// Puts the new sections in the place of the old ones.
void apply(const Recut& recut, Filled& filled);

} // namespace pelt::nest::straight
