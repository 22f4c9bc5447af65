// SPDX-License-Identifier: MIT
#include "nest/straight/run.hpp"

#include "nest/straight/bounds/bounds.hpp"
#include "nest/straight/exact/every_way.hpp"
#include "nest/strands.hpp"

#include <algorithm>
#include <array>

namespace pelt::nest::straight {
namespace {

constexpr std::size_t strand_count = 8;
constexpr double work_per_piece = 100'000;
constexpr double work_per_round = 2'000'000;
/// Rounds before every way is tried: the nearer the layout, the fewer ways can be shorter.
constexpr std::uint64_t first_rounds = 5;

bool has_stock(const Problem& problem) {
    return std::any_of(problem.stretches.begin(), problem.stretches.end(),
                       [](const Stretch& s) { return !s.is_new; });
}

Steps least_length(const Problem& problem) {
    const Steps width = new_width(problem);
    return width > 0 && !has_stock(problem) ? lower_bound(demands_of(problem), width).length : 0;
}

} // namespace

Steps new_width(const Problem& problem) {
    Steps width = 0;
    for (const Stretch& stretch : problem.stretches)
        if (stretch.is_new)
            width = std::max(width, stretch.across);
    return width;
}

Run::Run(const Problem& problem, const Effort& effort, const Watch& watch)
    : problem_(problem), effort_(effort), watch_(watch), bound_(least_length(problem)) {
    Random seeds(effort.seed);
    for (std::size_t i = 0; i < strand_count; ++i)
        strands_.emplace_back(problem, seeds.bits());
}

bool Run::work() {
    if (!construct())
        return false;
    const double work = whole_work() / strand_count;
    const double rounds = std::clamp(work / work_per_round, 5.0, 500.0);
    const auto each = static_cast<std::uint64_t>(work / rounds);
    if (may_look_at_every_way()) {
        improve(first_rounds, each);
        if (!stopped_ && !is_shortest())
            look_at_every_way();
    }
    if (!stopped_)
        improve(static_cast<std::uint64_t>(rounds), each);
    return true;
}

/// In looks at a node; as if the effort were 1 where it is without end.
double Run::whole_work() const {
    return work_per_piece * static_cast<double>(problem_.pieces()) * std::max(effort_.amount, 1);
}

bool Run::may_look_at_every_way() const {
    return can_try_every_way(problem_, reach_) &&
           (effort_.amount == 0 || work_of_every_way(problem_) < whole_work());
}

bool Run::go_on(double share) {
    stopped_ = watch_ && !watch_({reach_ * problem_.step, bound_ * problem_.step, share});
    return !stopped_;
}

bool Run::construct() {
    run_all(strand_count, effort_.threads, [&](std::size_t i) { strands_[i].construct(bound_); });
    return find_best();
}

void Run::improve(std::uint64_t rounds, std::uint64_t work_each) {
    for (std::uint64_t round = 0; !is_shortest(); ++round) {
        const bool endless = effort_.amount == 0 && rounds > first_rounds;
        if (round == rounds && !endless)
            return;
        if (!go_on(endless ? 0 : static_cast<double>(round) / static_cast<double>(rounds)))
            return;
        run_all(strand_count, effort_.threads, [&](std::size_t i) { run_strand(i, work_each); });
        find_best();
    }
}

bool Run::find_best() {
    bool better = false;
    for (const Search& strand : strands_)
        if (strand.best() && (!tree_ || strand.best_reach() < reach_)) {
            tree_ = strand.best();
            reach_ = strand.best_reach();
            better = true;
        }
    if (better)
        best_ = sheet_of(*tree_);
    return tree_.has_value();
}

void Run::run_strand(std::size_t i, std::uint64_t work) {
    static constexpr std::array<int, strand_count> share{2, 5, 10, 10, 20, 20, 35, 50};
    Search& strand = strands_[i];
    Steps best = reach_;
    std::uint64_t done = 0;
    while (done < work && best > bound_) {
        const Steps less = std::max<Steps>(1, (best - bound_) * share[i] / 100);
        strand.aim(best - less, best == reach_ ? *tree_ : *strand.best());
        done += strand.run(work - done);
        if (strand.best_reach() >= best)
            return;
        best = strand.best_reach();
    }
}

void Run::look_at_every_way() {
    const auto most_work =
        static_cast<std::uint64_t>(effort_.amount == 0 ? 1e18 : 4 * whole_work());
    EveryWay every =
        try_every_way(problem_, reach_ - 1, most_work, effort_.threads, [&] { return go_on(0.5); });
    if (every.sheet) {
        best_ = *std::move(every.sheet);
        reach_ = every.length;
    }
    if (every.complete)
        bound_ = reach_;
}

} // namespace pelt::nest::straight
