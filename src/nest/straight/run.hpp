// SPDX-License-Identifier: MIT
// One search from the first layout to the best that its effort finds: strands that shorten it in
// turns, and for small jobs every way of cutting.
#pragma once

#include "nest/straight/bounds/bounds.hpp"
#include "nest/straight/search.hpp"

namespace pelt::nest::straight {

class Run {
public:
    /// Keeps references to all three.
    Run(const Problem& problem, const Effort& effort, const Watch& watch);

    /// Works until the effort is spent, the layout is proved to be shortest, or the watch says
    /// stop. False when the film does not suffice for what this tried.
    /// It may begin with a layout of everything that is known.
    bool work(const Sheet* known = nullptr);

    const Sheet& best() const { return best_; }
    bool stopped() const { return stopped_; }
    /// No layout with so many turns on this table is shorter.
    bool is_shortest() const { return reach_ <= bound_; }
    /// What every layout with so many turns on this table needs; 0 where there is stock.
    Steps bound() const { return bound_; }
    /// What was proved before the search, for the pieces in all ways in which they may lie.
    const Proof& proof() const { return proof_; }

private:
    bool construct(const Sheet* known);
    void do_block(double share);
    void improve(double share, std::uint64_t work_each);
    bool find_best();
    void run_strand(std::size_t i, std::uint64_t work);
    void look_at_every_way();
    void recut(std::int64_t work_each);
    void keep(Sheet sheet);
    void ease();
    bool may_look_at_every_way() const;
    double work_of_block() const;
    double work_on_every_way() const;
    bool go_on(double share);

    const Problem& problem_;
    const Effort& effort_;
    const Watch& watch_;
    std::vector<Search> strands_;
    std::vector<Random> recutters_;
    std::optional<Tree> tree_; ///< the strands' best
    Proof proof_;
    Sheet best_;
    Steps reach_ = 0; ///< of best_
    Steps bound_ = 0;
    bool stopped_ = false;
};

/// The widest usable width of new film, 0 where there is none: a bound for it holds for all.
Steps new_width(const Problem& problem);

} // namespace pelt::nest::straight
