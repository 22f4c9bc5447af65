// SPDX-License-Identifier: MIT
#include "nest/straight/run.hpp"

#include "model/parallel.hpp"
#include "nest/straight/bounds/bounds.hpp"
#include "nest/straight/exact/every_way.hpp"
#include "nest/straight/recut.hpp"

#include <algorithm>
#include <array>
#include <limits>

namespace pelt::nest::straight {
namespace {

constexpr std::size_t strand_count = 8;
// Set by measurement on the instances of the bench and the shipped vehicles: looks at a node by all
// strands together, and by one strand between two times at which they are joined; ways to put two
// parts together, against such a look, in cutting a few sections anew and in trying every way.
constexpr double work_per_piece = 16'000;
constexpr int rounds_per_effort = 2;
constexpr double recut_share = 4;
constexpr double trial_share = 0.25;
constexpr double ease_share = 0.25;      ///< of the looks at a node, for fewer cuts
constexpr double every_way_share = 0.16; ///< of the looks, for a guess of the work
constexpr double guess_may_be_off = 150; ///< by so much, with many lies and few turns
/// Blocks before every way is tried: the nearer the layout, the fewer ways can be shorter.
constexpr std::uint64_t first_blocks = 1;
constexpr std::uint64_t endless_first_blocks = 20; ///< where the effort is without end

bool has_stock(const Problem& problem) {
    return std::any_of(problem.stretches.begin(), problem.stretches.end(),
                       [](const Stretch& s) { return !s.is_new; });
}

Proof proof_for(const Problem& problem) {
    const Steps width = new_width(problem);
    return width > 0 && !has_stock(problem) ? lower_bound(demands_of(problem), width) : Proof{};
}

Tree tree_of(const Problem& problem, const Sheet& sheet) {
    Tree tree(problem, limits_for(problem, greatest_reach(problem)));
    for (const Filled& filled : sheet)
        for (const Block& section : filled.sections)
            tree.adopt(filled.stretch, section);
    tree.commit();
    return tree;
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
    : problem_(problem), effort_(effort), watch_(watch), proof_(proof_for(problem)),
      bound_(proof_.length) {
    Random seeds(effort.seed);
    for (std::size_t i = 0; i < strand_count; ++i)
        strands_.emplace_back(problem, seeds.bits());
    for (std::size_t i = 0; i < strand_count; ++i)
        recutters_.emplace_back(seeds.bits());
}

bool Run::work(const Sheet* known) {
    if (!construct(known))
        return false;
    const bool endless = effort_.amount == 0;
    const bool every_way = may_look_at_every_way();
    const auto blocks = endless ? std::numeric_limits<std::uint64_t>::max()
                                : static_cast<std::uint64_t>(std::max(effort_.amount, 1));
    for (std::uint64_t block = 0; block < blocks && !stopped_; ++block) {
        do_block(endless ? 0 : static_cast<double>(block) / static_cast<double>(blocks));
        if (every_way && block == (endless ? endless_first_blocks : first_blocks) - 1 &&
            !stopped_ && !is_shortest())
            look_at_every_way();
        if (endless && is_shortest())
            break;
    }
    return true;
}

/// More effort is more blocks of the same size, so that it begins like less effort; and fewer cuts
/// are looked for in each, as the layout may become shorter by them.
void Run::do_block(double share) {
    const double each = work_of_block() / strand_count / rounds_per_effort;
    improve(share, static_cast<std::uint64_t>(each));
    if (!stopped_ && !effort_.trial)
        ease();
}

/// Of a block, in looks at a node.
double Run::work_of_block() const {
    return work_per_piece * static_cast<double>(problem_.pieces()) *
           (effort_.trial ? trial_share : 1);
}

double Run::work_on_every_way() const {
    return every_way_share * work_of_block() * std::max(effort_.amount, 1);
}

bool Run::may_look_at_every_way() const {
    return can_try_every_way(problem_, reach_) &&
           (effort_.amount == 0 || work_of_every_way(problem_) < work_on_every_way());
}

bool Run::go_on(double share) {
    stopped_ = watch_ && !watch_({reach_ * problem_.step, bound_ * problem_.step, share});
    return !stopped_;
}

bool Run::construct(const Sheet* known) {
    run_all(strand_count, effort_.threads, [&](std::size_t i) { strands_[i].construct(bound_); });
    const bool found = find_best();
    if (known == nullptr)
        return found;
    if (!found || reach_of(problem_, tree_of(problem_, *known)) < reach_)
        keep(*known);
    return true;
}

void Run::improve(double share, std::uint64_t work_each) {
    for (int round = 0; round < rounds_per_effort && !is_shortest(); ++round) {
        if (!go_on(share))
            return;
        run_all(strand_count, effort_.threads, [&](std::size_t i) { run_strand(i, work_each); });
        find_best();
        if (!effort_.trial) // a third of a trial's time, and no shorter plans come of it
            recut(static_cast<std::int64_t>(recut_share * static_cast<double>(work_each)));
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

/// What trying every way has proved does not steer the strands: with more effort they are to begin
/// as with less, where it was not tried.
void Run::run_strand(std::size_t i, std::uint64_t work) {
    static constexpr std::array<int, strand_count> share{2, 5, 10, 10, 20, 20, 35, 50};
    Search& strand = strands_[i];
    Steps best = reach_;
    std::uint64_t done = 0;
    while (done < work && best > proof_.length) {
        const Steps less = std::max<Steps>(1, (best - proof_.length) * share[i] / 100);
        strand.aim(best - less, best == reach_ ? *tree_ : *strand.best());
        done += strand.run(work - done);
        if (strand.best_reach() >= best)
            return;
        best = strand.best_reach();
    }
}

/// Every strand looks at other sections; the best of what they find is done, as long as there is
/// something.
void Run::recut(std::int64_t work_each) {
    if (best_.back().sections.size() < 2)
        return;
    Sheet sheet = best_;
    std::vector<std::int64_t> work(strand_count, work_each);
    while (true) {
        std::vector<std::optional<Recut>> found(strand_count);
        run_all(strand_count, effort_.threads, [&](std::size_t i) {
            found[i] = find_recut(problem_, sheet.back(), recutters_[i], work[i]);
        });
        const auto best =
            std::max_element(found.begin(), found.end(), [](const auto& a, const auto& b) {
                return (a ? a->saved : 0) < (b ? b->saved : 0);
            });
        if (!*best)
            break;
        apply(**best, sheet.back());
    }
    keep(std::move(sheet));
}

/// The strands look for fewer cuts at the same length or less.
void Run::ease() {
    if (reach_of(problem_, *tree_) != reach_)
        keep(best_);
    const auto work = static_cast<std::uint64_t>(ease_share * work_of_block() / strand_count);
    run_all(strand_count, effort_.threads, [&](std::size_t i) { strands_[i].ease(*tree_, work); });
    for (const Search& strand : strands_)
        if (std::make_pair(strand.best_reach(), strand.best()->cuts()) <
            std::make_pair(reach_, tree_->cuts())) {
            tree_ = strand.best();
            reach_ = strand.best_reach();
            best_ = sheet_of(*tree_);
        }
}

/// For the strands to go on from.
void Run::keep(Sheet sheet) {
    tree_ = tree_of(problem_, sheet);
    reach_ = reach_of(problem_, *tree_);
    best_ = std::move(sheet);
}

void Run::look_at_every_way() {
    const auto most_work = static_cast<std::uint64_t>(
        effort_.amount == 0 ? 1e18 : guess_may_be_off * work_on_every_way());
    EveryWay every = try_from_below(problem_, bound_, reach_ - 1, most_work, effort_.threads,
                                    [&] { return go_on(0.5); });
    if (every.sheet) {
        best_ = *std::move(every.sheet);
        reach_ = every.length;
    }
    bound_ = every.bound;
}

} // namespace pelt::nest::straight
