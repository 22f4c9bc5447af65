// SPDX-License-Identifier: MIT
// The least sides of parts of a layout, by the pieces in them.
#pragma once

#include "nest/straight/exact/yards.hpp"

#include <limits>
#include <span>

namespace pelt::nest::straight {

using Length = std::int32_t;
inline constexpr Length never = std::numeric_limits<Length>::max();

struct Sides {
    Length along = 0;
    Length across = 0;
};

/// Sides of which none is at least another both ways: along rises, across falls.
using Stair = std::span<const Sides>;

/// A stair for every state, and the shortest length on the whole width.
class Stairs {
public:
    void clear(const States& states);
    Stair operator[](State s) const { return {sides_.data() + cells_[s].first, cells_[s].count}; }
    Length whole(State s) const { return wholes_[s]; }
    /// The least film without a piece on it in a part with one of these sides.
    std::int64_t waste(State s) const { return wastes_[s]; }
    void set(State s, Stair stair, Length whole, Length waste);
    std::size_t sides() const { return sides_.size(); }
    const StateSet& with_stair() const { return with_stair_; }
    const StateSet& with_whole() const { return with_whole_; }

private:
    struct Cell {
        std::uint32_t first = 0;
        std::uint32_t count = 0;
    };
    std::vector<Cell> cells_;
    std::vector<Length> wholes_; // apart from the cells, as they are asked for far more often
    std::vector<Length> wastes_;
    std::vector<Sides> sides_;
    StateSet with_stair_;
    StateSet with_whole_;
};

/// Collects the ways to make one state after the other, and keeps the best of each.
class StairMaker {
public:
    /// No part may be longer than `longest`.
    StairMaker(const Problem& problem, const States& states, const Yards& yards, Steps longest);

    void start(State s);
    void offer(Length along, Length across) {
        if (across > width_ || along > longest_)
            return;
        whole_ = std::min(whole_, along);
        if (across > widest_ || std::int64_t{along} * across > largest_)
            return;
        Length& shortest = shortest_[static_cast<std::size_t>(across)];
        if (shortest == never)
            touched_.push_back(across);
        shortest = std::min(shortest, along);
    }
    void offer_whole(Length along) { whole_ = std::min(whole_, along); }
    /// All ways to lay one of the first beside (behind) one of the second.
    void offer_beside(Stair a, Stair b);
    void offer_behind(Stair a, Stair b);
    void finish();

    /// Moves what was collected since the last time.
    void hand_over(Stairs& stairs);
    /// A unit is a word of ways to put two parts together, or a pair of sides of them.
    void count(std::uint64_t work) { work_ += work; }
    std::uint64_t take_work();

private:
    struct Result {
        State state = 0;
        std::size_t count = 0;
        Length whole = never;
        Length waste = 0;
    };
    void keep_stair(Result& result);

    const Problem* problem_;
    const States* states_;
    const Yards* yards_;
    Length width_;
    Length length_;
    Length longest_;
    Length widest_ = 0; ///< of a part beside which something still fits
    Length whole_ = never;
    std::int64_t spare_ = 0;   ///< film of the whole length that no piece takes
    std::int64_t largest_ = 0; ///< film that a part may take
    State state_ = 0;
    std::vector<Length> shortest_; ///< by width
    std::vector<Length> touched_;  ///< widths in shortest_
    Yards::Rest rest_;
    std::vector<Result> results_;
    std::vector<Sides> sides_;
    std::uint64_t work_ = 0;
};

} // namespace pelt::nest::straight
