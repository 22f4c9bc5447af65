// SPDX-License-Identifier: MIT
// A roll in strips: what comes off it in one go.
#pragma once

#include "report/cut_steps.hpp"

#include <cstddef>
#include <vector>

namespace pelt::report::paper {

/// From `from` to `to` along a roll.
struct Strip {
    std::size_t roll = 0;
    Um from = 0;
    Um to = 0;
    std::vector<CutStep> steps; ///< the cut that takes it off the roll, and those through it
};

/// Straight cutting: from one cut across the whole roll to the next. Contour cutting: stretches of
/// at most two metres that as few pieces as possible run out of; a piece that does is on both.
std::vector<Strip> strips_of(const Plan& plan, const std::vector<PlacedPiece>& pieces);

/// Strips put together into rows of at most `longest`, as far as single strips allow.
std::vector<Strip> rows_within(const std::vector<Strip>& strips, Um longest);

/// Strips that lie one behind the other on one roll: from `first` to before `end`.
struct StripRun {
    std::size_t first = 0;
    std::size_t end = 0;
};

/// The strips of a run as one, with all their cuts.
Strip joined(const std::vector<Strip>& strips, StripRun run);

/// How long rows must be for all strips of every roll to go into so many.
Um row_length(const std::vector<Strip>& strips, std::size_t rows);

} // namespace pelt::report::paper
