// SPDX-License-Identifier: MIT
#include "nest/straight/straight.hpp"

#include "nest/straight/bounds.hpp"
#include "nest/straight/emit.hpp"
#include "nest/straight/search.hpp"
#include "nest/strands.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace pelt::nest::straight {
namespace {

constexpr std::size_t strand_count = 8;
constexpr std::uint64_t work_per_piece = 100'000;

/// The widest usable width of new film: a bound for it holds for all.
Steps new_width(const Problem& problem) {
    Steps width = 0;
    for (const Stretch& stretch : problem.stretches)
        if (stretch.is_new)
            width = std::max(width, stretch.across);
    return width;
}

Proof least_length(const Problem& problem) {
    std::vector<Demand> demands;
    for (const Kind& kind : problem.kinds)
        demands.push_back({kind.lies, kind.demand()});
    const Steps width = new_width(problem);
    return width > 0 ? lower_bound(demands, width) : Proof{};
}

void count_pieces(const Block& block,
                  std::map<std::pair<std::int32_t, std::uint8_t>, std::size_t>& counts) {
    if (block.is_piece())
        ++counts[{block.kind, block.lie}];
    for (const Block& child : block.children)
        count_pieces(child, counts);
}

/// For the pieces on new film as they are cut, in any turn that their direction allows.
Bound bound_as_cut(const Problem& problem, const Sheet& sheet) {
    std::map<std::pair<std::int32_t, std::uint8_t>, std::size_t> counts;
    for (const Filled& filled : sheet)
        if (problem.stretches[filled.stretch].is_new)
            for (const Block& section : filled.sections)
                count_pieces(section, counts);
    std::vector<Demand> demands;
    for (const auto& [way, count] : counts) {
        const Kind& kind = problem.kinds[static_cast<std::size_t>(way.first)];
        const Lie& lie = kind.lies[way.second];
        demands.push_back({{lie}, count});
        if (!kind.directed && lie.along <= new_width(problem))
            demands.back().lies.push_back({lie.across, lie.along, lie.along * problem.step});
    }
    Proof proof = lower_bound(demands, new_width(problem));
    return {proof.length * problem.step, std::move(proof.argument)};
}

bool has_stock(const Problem& problem) {
    return std::any_of(problem.stretches.begin(), problem.stretches.end(),
                       [](const Stretch& s) { return !s.is_new; });
}

class Run {
public:
    Run(const Problem& problem, const Effort& effort, const Watch& watch)
        : problem_(problem), effort_(effort), watch_(watch) {
        Random seeds(effort.seed);
        for (std::size_t i = 0; i < strand_count; ++i)
            strands_.emplace_back(problem, seeds.bits());
        bound_ = has_stock(problem) ? 0 : least_length(problem).length;
    }

    bool construct() {
        run_all(strand_count, effort_.threads,
                [&](std::size_t i) { strands_[i].construct(bound_); });
        return find_best();
    }

    void improve() {
        const std::uint64_t work = work_per_piece * problem_.pieces() / strand_count *
                                   static_cast<std::uint64_t>(std::max(effort_.amount, 1));
        const std::uint64_t rounds = std::clamp<std::uint64_t>(work / 2'000'000, 5, 500);
        for (std::uint64_t round = 0; best_reach_ > bound_; ++round) {
            if (effort_.amount > 0 && round == rounds)
                return;
            if (watch_ && !watch_({best_reach_ * problem_.step, bound_ * problem_.step,
                                   effort_.amount > 0
                                       ? static_cast<double>(round) / static_cast<double>(rounds)
                                       : 0})) {
                stopped_ = true;
                return;
            }
            run_all(strand_count, effort_.threads,
                    [&](std::size_t i) { run_strand(i, work / rounds); });
            find_best();
        }
    }

    const Tree& best() const { return *best_; }
    bool stopped() const { return stopped_; }

private:
    bool find_best() {
        for (const Search& strand : strands_)
            if (strand.best() && (!best_ || strand.best_reach() < best_reach_)) {
                best_ = strand.best();
                best_reach_ = strand.best_reach();
            }
        return best_.has_value();
    }

    void run_strand(std::size_t i, std::uint64_t work) {
        static constexpr std::array<int, strand_count> share{2, 5, 10, 10, 20, 20, 35, 50};
        Search& strand = strands_[i];
        Steps best = best_reach_;
        const std::uint64_t per_aim = work;
        std::uint64_t done = 0;
        while (done < work && best > bound_) {
            const Steps less = std::max<Steps>(1, (best - bound_) * share[i] / 100);
            strand.aim(best - less, *best_);
            done += strand.run(per_aim - done);
            if (strand.best_reach() < best)
                best = strand.best_reach();
            else
                break;
        }
    }

    const Problem& problem_;
    const Effort& effort_;
    const Watch& watch_;
    std::vector<Search> strands_;
    Steps bound_ = 0;
    std::optional<Tree> best_;
    Steps best_reach_ = 0;
    bool stopped_ = false;
};

} // namespace

Result nest(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch) {
    const Problem problem = problem_of(pieces, rolls, goal);
    if (!problem.misfits.empty())
        return {std::nullopt, problem.misfits};
    Run run(problem, effort, watch);
    if (!run.construct())
        return {std::nullopt, {}};
    run.improve();
    const Sheet sheet = sheet_of(run.best());
    Layout layout;
    layout.rolls = used_rolls(problem, sheet, pieces, rolls);
    layout.bound = bound_as_cut(problem, sheet);
    layout.stopped = run.stopped();
    return {std::move(layout), {}};
}

} // namespace pelt::nest::straight
