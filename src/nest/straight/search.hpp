// SPDX-License-Identifier: MIT
// The search for a shorter layout: ruin and recreate on the tree of cuts. The length is fixed
// below the best known one, some pieces are taken out and put back, in the hope that all of them
// go in; then the length is fixed lower still.
// The idea of ruin and recreate on guillotine trees under a shrinking limit: Gardeyn & Wauters
// 2022, "A goal-driven ruin and recreate heuristic for the 2D variable-sized bin packing problem
// with guillotine constraints", EJOR 301. Worse layouts are accepted up to a threshold that falls:
// Dueck & Scheuer 1990, J. Comput. Phys. 90.
#pragma once

#include "nest/random.hpp"
#include "nest/straight/block.hpp"

#include <optional>

namespace pelt::nest::straight {

/// New film that a layout needs, counted over all new rolls, and the stretches' limits for it.
Steps reach_of(const Problem& problem, const Tree& tree);
std::vector<Steps> limits_for(const Problem& problem, Steps reach);
/// The reach at which every stretch is whole.
Steps greatest_reach(const Problem& problem);

class Search {
public:
    Search(const Problem& problem, std::uint64_t seed);

    /// A first layout of everything; false when the film does not suffice for what this tried.
    bool construct(Steps bound);
    /// The best layout so far, everything placed.
    const std::optional<Tree>& best() const { return best_; }
    Steps best_reach() const { return best_reach_; }

    /// Looks for a layout with at most this reach from now on, from `start` on.
    void aim(Steps reach, const Tree& start);
    /// Works until about `work` more units are done or the aim is met; gives what was done.
    std::uint64_t run(std::uint64_t work);
    /// Looks for layouts of no more reach with fewer cuts, from a whole one on; `best()` is then
    /// the one with the fewest.
    void ease(const Tree& start, std::uint64_t work);

private:
    void fill();
    void ruin();
    void step();
    std::vector<std::int32_t> order();
    double cost() const;
    double key(std::int32_t kind, std::size_t rule) const;
    void keep_if_complete();
    std::int32_t some_piece();

    const Problem* problem_;
    Random random_;
    std::optional<Tree> tree_;
    std::vector<std::int32_t> unplaced_;
    std::optional<Tree> best_;
    Steps best_reach_ = 0;
    double current_ = 0;
    double heat_ = 0;
    double whole_area_ = 0;
    std::uint64_t work_ = 0; ///< looks at a node
};

} // namespace pelt::nest::straight
