// SPDX-License-Identifier: MIT
#include "order/on_stock.hpp"

#include "order/relaying.hpp"
#include "order/wide_pieces.hpp"

#include <algorithm>
#include <utility>

namespace pelt::order {
namespace {

class OnAll {
public:
    OnAll(const Job& job, const Copies& copies, const Rolls& longest_first,
          const nest::Effort& effort, const nest::Watch& watch)
        : job_(job), copies_(copies), rolls_(longest_first), effort_(effort), quick_(effort),
          watch_(watch) {
        constexpr std::size_t few_pieces = 12;
        quick_.trial = quick_.trial || count_of(copies) > few_pieces;
    }

    /// The search fills rolls in the order given, which decides what goes where; what it finds no
    /// room for in one order it may find room for in another.
    std::optional<Layout> run() {
        if (auto layout = fill_tightly(job_, copies_, rolls_, effort_, watch_).layout)
            return layout;
        if (rolls_.size() < 2 || job_.by == CutBy::contour) // a search along outlines takes long
            return std::nullopt;
        if (auto layout = wide_ones_divided())
            return layout;
        Rolls order = rolls_;
        std::reverse(order.begin(), order.end());
        if (auto layout = fill_tightly(job_, copies_, order, quick_, watch_).layout)
            return layout;
        for (const Rolls& stock : {rolls_, order})
            if (auto layout = without_new_film(stock))
                return layout;
        return std::nullopt;
    }

private:
    /// As stock before new film, which the search then takes as little of as it can: here none.
    std::optional<Layout> without_new_film(Rolls rolls) {
        for (std::size_t i = 0; i < job_.rolls.size(); ++i)
            if (job_.rolls[i].is_new)
                rolls.push_back(i);
        std::optional<Layout> layout = fill(job_, copies_, rolls, quick_, watch_).layout;
        if (!layout || takes_new_film(job_, *layout))
            return std::nullopt;
        return tightened(job_, on_stock_alone(job_, *std::move(layout)), effort_, watch_);
    }

    /// Pieces that never lie side by side: which lengths go on which roll is all there is to it.
    std::optional<Layout> wide_ones_divided() {
        const Um usable = job_.film.usable_width();
        const auto is_whole = [&](std::size_t i) {
            const Roll& roll = job_.rolls[i];
            return roll.flaws.empty() && roll.width - 2 * roll.trim == usable;
        };
        const std::vector<WidePiece> wide = wide_pieces(job_, copies_);
        if (wide.size() != count_of(copies_) ||
            !std::all_of(rolls_.begin(), rolls_.end(), is_whole))
            return std::nullopt;
        std::vector<Um> lengths;
        for (const std::size_t roll : rolls_)
            lengths.push_back(*job_.rolls[roll].available);
        const Divided division = divided(wide, lengths);
        if (!division.possible || division.rolls.empty())
            return std::nullopt;
        Layout all;
        for (std::size_t i = 0; i < rolls_.size(); ++i) {
            const Copies own = copies_on_roll(job_, wide, division, i);
            if (!any(own))
                continue;
            auto one = fill_tightly(job_, own, {rolls_[i]}, effort_, watch_).layout;
            if (!one)
                return std::nullopt;
            all.rolls.push_back(std::move(one->rolls.front()));
        }
        return all;
    }

    const Job& job_;
    const Copies& copies_;
    const Rolls& rolls_;
    const nest::Effort& effort_;
    nest::Effort quick_; ///< once more, and once more, must not take as long each time
    const nest::Watch& watch_;
};

} // namespace

bool may_hold(const Job& job, const Rolls& rolls, const Copies& copies) {
    return least_area(job, copies) <= area_of(job, rolls);
}

std::optional<Layout> on_fewest(const Job& job, const Copies& copies, Rolls rolls,
                                const nest::Effort& effort, const nest::Watch& watch) {
    constexpr std::size_t most_tries = 3;
    const auto longer = [&](std::size_t a, std::size_t b) {
        return std::pair(job.rolls[b].available, a) < std::pair(job.rolls[a].available, b);
    };
    std::sort(rolls.begin(), rolls.end(), longer);
    std::size_t tries = 0;
    for (auto roll = rolls.rbegin(); roll != rolls.rend() && tries < most_tries; ++roll)
        if (rolls.size() > 1 && may_hold(job, {*roll}, copies)) {
            ++tries;
            if (auto layout = fill_tightly(job, copies, {*roll}, effort, watch).layout)
                return layout;
        }
    return OnAll(job, copies, rolls, effort, watch).run();
}

} // namespace pelt::order
