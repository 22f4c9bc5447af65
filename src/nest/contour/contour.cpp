// SPDX-License-Identifier: MIT
#include "nest/contour/contour.hpp"

#include "nest/contour/bounds.hpp"
#include "nest/contour/finish.hpp"
#include "nest/contour/problem.hpp"
#include "nest/contour/repeat.hpp"
#include "nest/contour/turning.hpp"

#include <algorithm>

namespace pelt::nest::contour {
namespace {

// The bound is for the pieces on new film; what lies on stock does not count.
class NewFilm {
public:
    NewFilm(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal)
        : pieces_(pieces), rolls_(rolls) {
        count_ = static_cast<std::size_t>(std::count_if(
            rolls.begin(), rolls.end(), [](const Roll& roll) { return roll.is_new; }));
        const auto first =
            std::find_if(rolls.begin(), rolls.end(), [](const Roll& roll) { return roll.is_new; });
        if (first != rolls.end())
            bounds_.emplace(pieces, first->width - 2 * first->trim, goal.gap, goal.free_turns);
    }

    /// 0 when some of the pieces may lie on stock.
    Um least_for_all() const {
        if (count_ < rolls_.size())
            return 0;
        std::vector<std::size_t> demand;
        for (const Piece& piece : pieces_)
            demand.push_back(piece.ids.size());
        return bounds_->best(demand, count_).length;
    }

    Bound bound_of(const Layout& layout) const {
        std::vector<std::size_t> demand(pieces_.size());
        for (const UsedRoll& used : layout.rolls)
            if (rolls_[used.roll].is_new)
                for (const Placement& placement : used.placements)
                    ++demand[placement.piece];
        return bounds_ ? bounds_->best(demand, count_) : Bound{};
    }

private:
    std::span<const Piece> pieces_;
    std::span<const Roll> rolls_;
    std::size_t count_ = 0;
    std::optional<Bounds> bounds_;
};

// One list of turns for every piece, searched from a layout or from nothing.
class Lists {
public:
    Lists(std::span<const Roll> rolls, const Goal& goal, const Effort& effort, Um least,
          const Watch& watch)
        : rolls_(rolls), gap_(goal.gap), effort_(effort), least_(least), watch_(watch),
          memory_(effort.memory ? effort.memory : new_memory()) {}

    bool run(std::span<const Piece> pieces, const Stint& stint, Result& result) {
        std::vector<std::size_t> misfits;
        memory_->forget_if_full();
        Problem problem = prepare(pieces, rolls_, gap_, memory_, misfits);
        problem.proven_least = static_cast<double>(least_);
        if (!misfits.empty()) {
            result.misfits = misfits;
            return false;
        }
        if (problem.items.empty()) {
            result.layout = Layout{};
            return false;
        }
        const Finisher finisher(problem, pieces, rolls_, gap_);
        Search search(problem, finisher, effort_, least_, watch_);
        Stint rest = stint;
        if (!result.layout)
            result.layout = in_repeats(problem, finisher, rest);
        if (result.layout && (result.layout->stopped || !search.start_from(*result.layout)))
            return false;
        search.run(rest);
        result.layout = search.layout();
        if (result.layout)
            result.layout->stopped = search.stopped();
        else
            result.misfits = search.misfits();
        return !search.stopped() && !search.done();
    }

private:
    // Takes half of the stint off the rest, unless nothing comes of it.
    std::optional<Layout> in_repeats(const Problem& problem, const Finisher& finisher,
                                     Stint& rest) const {
        const std::optional<Repeat> repeat = repeat_for(problem, effort_);
        if (!repeat)
            return std::nullopt;
        Stint own = rest;
        own.epochs = rest.epochs == 0 ? tuning::timed_pattern_epochs
                                      : std::max<std::uint64_t>(rest.epochs / 2, 1);
        if (rest.epochs > 0)
            own.share_to = (rest.share_from + rest.share_to) / 2;
        const std::optional<Pattern> pattern = pattern_for(problem, *repeat, effort_, watch_, own);
        if (!pattern)
            return std::nullopt;
        const std::optional<std::vector<Pose>> poses =
            laid_in_repeats(problem, *repeat, pattern->found, effort_.seed);
        std::optional<Layout> layout = poses ? finisher.layout(*poses) : std::nullopt;
        if (rest.epochs > 0)
            rest.share_from = own.share_to;
        if (layout) {
            layout->stopped = pattern->stopped;
            rest.epochs -= rest.epochs / 2;
        }
        return layout;
    }

    std::span<const Roll> rolls_;
    Um gap_;
    const Effort& effort_;
    Um least_;
    const Watch& watch_;
    std::shared_ptr<Memory> memory_;
};

// The listed turns first, as without free turns; then a quarter of that work askew, from that
// layout on: every round makes forms and fields of its own, which takes as long again.
Result with_free_turns(std::span<const Piece> pieces, std::span<const Roll> rolls, Lists& lists,
                       const Effort& effort) {
    const std::uint64_t epochs = epochs_of(effort);
    const std::uint64_t rounds = 2 + 2 * std::min<std::uint64_t>(epochs / tuning::joins_a_unit, 20);
    constexpr double listed_share = 0.75; // of the time
    Result result;
    const std::vector<Piece> first = with_askew_turns(pieces, rolls);
    if (effort.trial) {
        lists.run(first, {epochs, 0, 1}, result);
        return result;
    }
    if (!lists.run(
            first,
            {epochs == 0 ? tuning::joins_a_unit : epochs, 0, epochs == 0 ? 0.0 : listed_share},
            result))
        return result;
    Turning turning(first);
    for (std::uint64_t round = 0; epochs == 0 || round < rounds; ++round) {
        const std::vector<Piece> near = turning.next(*result.layout);
        if (near.empty())
            break;
        const auto share = [&](std::uint64_t k) {
            return epochs == 0 ? 0
                               : listed_share + (1 - listed_share) * static_cast<double>(k) /
                                                    static_cast<double>(rounds);
        };
        const std::uint64_t stint =
            epochs == 0 ? tuning::joins_a_unit / 2
                        : std::max<std::uint64_t>(epochs / tuning::askew_part / rounds, 1);
        if (!lists.run(near, {stint, share(round), share(round + 1)}, result))
            break;
    }
    return result;
}

} // namespace

Result nest(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch) {
    const bool freely = goal.free_turns && any_lies_freely(pieces);
    const NewFilm film(pieces, rolls, goal);
    Lists lists(rolls, goal, effort, film.least_for_all(), watch);
    Result result;
    if (freely)
        result = with_free_turns(pieces, rolls, lists, effort);
    else
        lists.run(pieces, {epochs_of(effort), 0, 1}, result);
    if (result.layout && !result.layout->rolls.empty())
        result.layout->bound = film.bound_of(*result.layout);
    return result;
}

} // namespace pelt::nest::contour
