// SPDX-License-Identifier: MIT
// A job of many like pieces: a pattern of a few of them that fits to its own repeats, laid again
// and again. A search over all pieces at once hardly ever finds such order by itself.
#pragma once

#include "nest/contour/search.hpp"

#include <optional>
#include <vector>

namespace pelt::nest::contour {

/// So many of every kind, so many times over; what is left of the job is no part of it.
struct Repeat {
    std::vector<std::size_t> each; ///< by kind
    std::size_t times = 0;
    std::size_t items = 0; ///< of one pattern
};

/// The smallest pattern worth repeating; none when too little of the job repeats, or when it is so
/// small that a search over all of it finds more in this effort.
std::optional<Repeat> repeat_for(const Problem& problem, const Effort& effort);

/// Poses of a pattern, with its period as their `end`.
struct Pattern {
    Found found;
    bool stopped = false; ///< the watch asked to stop
};

/// A pattern, searched for in a stint; none when the film is too narrow for it.
std::optional<Pattern> pattern_for(const Problem& problem, const Repeat& repeat,
                                   const Effort& effort, const Watch& watch, const Stint& stint);

/// The pattern as often as the bays hold it, and whatever is left between and behind; nothing when
/// they hold it too few times, or the film does not do.
std::optional<std::vector<Pose>> laid_in_repeats(const Problem& problem, const Repeat& repeat,
                                                 const Found& pattern, std::uint64_t seed);

} // namespace pelt::nest::contour
