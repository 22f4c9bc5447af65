// SPDX-License-Identifier: MIT
// Drives overlap to nothing before a given end. Every item in conflict moves in turn to where its
// weighted overlap is least; what stays in conflict grows heavier (guided local search, Voudouris &
// Tsang 1999). The scheme of sweeps, weights by share of the worst overlap and their fading follows
// Gardeyn, Vanden Berghe & Wauters 2025, arXiv:2509.13329. Our own: depths looked up in fields
// (field.hpp), places copied from like neighbours, the joint relaxation (relaxation.hpp).
// One sweep costs (items in conflict) × (places tried) × (items beside a place).
#pragma once

#include "nest/contour/mover.hpp"
#include "nest/contour/relaxation.hpp"

#include <vector>

namespace pelt::nest::contour {

struct Conflict {
    std::uint32_t a = 0;
    std::uint32_t b = 0;
    double violation = 0;
};

class Separator {
public:
    Separator(const Problem& problem, Random& random);

    /// Begins from these poses, pushed before `end`; all weights are 1 again.
    void begin(const std::vector<Pose>& poses, double end);

    /// Moves every item in conflict once, in random order, then raises the weights of what is
    /// left. True once nothing is left.
    bool sweep();

    bool separated() const { return conflicts_.empty(); }
    /// Sum of violations, unweighted.
    double total() const { return total_; }
    double least_total() const { return least_total_; }
    const std::vector<Pose>& least_poses() const { return least_poses_; }
    /// Sweeps since the least total last fell by a useful amount.
    int idle_sweeps() const { return idle_; }
    const Scene& scene() const { return scene_; }
    double end() const { return end_; }
    std::uint64_t work() const { return mover_.work() + relaxation_.work() + work_; }

    Sampling sampling;

    /// Asks for this much more than every gap; `most_margin_um` at most.
    void keep_margin(double um);

private:
    void find_conflicts();
    void find_conflicts_of(std::uint32_t item);
    void raise_weights();
    bool relax();
    std::vector<std::uint32_t> items_in_conflict();

    const Problem* problem_;
    Random* random_;
    Scene scene_;
    Weights weights_;
    Mover mover_;
    Relaxation relaxation_;
    double typical_side_;
    int since_relaxed_ = 0;
    double end_ = 0;
    double margin_ = 0;
    std::vector<Conflict> conflicts_;
    double total_ = 0;
    double least_total_ = 0;
    std::vector<Pose> least_poses_;
    int idle_ = 0;
    std::uint64_t work_ = 0;
};

/// The pose moved so that it ends before `end`; drawn anew where its bay has no room left. The
/// pose unchanged where nothing fits.
Pose pushed_before(const Problem& problem, Mover& mover, std::size_t item, Pose pose, double end);

} // namespace pelt::nest::contour
