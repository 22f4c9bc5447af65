// SPDX-License-Identifier: MIT
#include "order/shelf.hpp"

#include "order/buying.hpp"
#include "order/names.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

namespace pelt::order {
namespace {

using Rolls = std::vector<std::size_t>;

/// Rolls of one batch; the cost of a kilometre ranks them.
struct Batch {
    std::string name; ///< empty: not known, a single roll
    Rolls rolls;
};

std::vector<Batch> batches_of(const Shelf& shelf) {
    std::vector<Batch> out;
    for (std::size_t i = 0; i < shelf.rolls.size(); ++i) {
        const std::string& name = shelf.rolls[i].batch;
        const auto same = std::find_if(out.begin(), out.end(), [&](const Batch& batch) {
            return !name.empty() && batch.name == name;
        });
        if (same == out.end())
            out.push_back({name, {i}});
        else
            same->rolls.push_back(i);
    }
    return out;
}

/// All of the rolls, then ever fewer: the dearest are left out first.
std::vector<Rolls> ever_cheaper(const Shelf& shelf, Rolls rolls) {
    constexpr Um kilometre = 1'000'000'000;
    const auto cost = [&](std::size_t roll) { return shelf.costs[roll].of(kilometre); };
    constexpr std::size_t most_tries = 4;
    std::vector<Rolls> out;
    while (!rolls.empty() && out.size() < most_tries) {
        out.push_back(rolls);
        Money dearest;
        for (const std::size_t roll : rolls)
            dearest = std::max(dearest, cost(roll));
        if (dearest == Money{})
            break;
        std::erase_if(rolls, [&](std::size_t roll) { return cost(roll) == dearest; });
    }
    return out;
}

DoubleArea area_of(const Roll& roll) {
    return DoubleArea{2} * roll.available.value_or(0) * (roll.width - 2 * roll.trim);
}

DoubleArea least_area(const Piece& piece) {
    DoubleArea least = 0;
    for (const CutShape& shape : piece.shapes) {
        DoubleArea area = doubled_area(shape.outline.outer);
        for (const Ring& hole : shape.outline.holes)
            area += doubled_area(hole);
        least = least == 0 ? area : std::min(least, area);
    }
    return least;
}

class FillFromShelf {
public:
    FillFromShelf(Job& job, const Shelf& shelf, Um spare, const nest::Effort& effort,
                  const nest::Watch& watch)
        : job_(job), shelf_(shelf), spare_(spare), effort_(effort), watch_(watch),
          all_(all_copies(job)) {
        job_.rolls.insert(job_.rolls.begin(), shelf.rolls.begin(), shelf.rolls.end());
        for (std::size_t i = 0; i < job_.rolls.size(); ++i)
            (job_.rolls[i].is_new ? new_ : stock_).push_back(i);
        free_ = all_;
        bound_ = all_;
        for (std::size_t i = 0; i < job_.pieces.size(); ++i)
            (job_.pieces[i].batch_free ? bound_ : free_)[i].clear();
    }

    nest::Result run(Faults& faults) {
        const std::vector<Batch> batches = batches_of(shelf_);
        for (const Batch& batch : batches)
            for (const Rolls& rolls : ever_cheaper(shelf_, batch.rolls))
                try_batch(rolls);
        if (!best_ || score_[0] > 0 || score_[1] > 0)
            try_new_film();
        if (best_ && takes_new_film(*best_))
            tell_what_forces_new_film(batches, faults);
        if (best_)
            return {std::move(best_), {}};
        return {std::nullopt, misfits_};
    }

private:
    bool any(const Copies& copies) const {
        return std::any_of(copies.begin(), copies.end(),
                           [](const auto& some) { return !some.empty(); });
    }

    bool may_hold(const Rolls& rolls, const Copies& copies) const {
        DoubleArea film = 0;
        for (const std::size_t roll : rolls)
            film += area_of(job_.rolls[roll]);
        DoubleArea pieces = 0;
        for (std::size_t i = 0; i < copies.size(); ++i)
            pieces += static_cast<DoubleArea>(copies[i].size()) * least_area(job_.pieces[i]);
        return pieces <= film;
    }

    std::optional<Layout> filled(const Copies& copies, const Rolls& rolls) {
        nest::Result result = fill(job_, copies, rolls, effort_, watch_);
        if (!result.layout && !result.misfits.empty())
            misfits_ = result.misfits;
        return std::move(result.layout);
    }

    std::optional<Layout> on_new_film(const Copies& copies) {
        nest::Result result = fill_new_film(job_, copies, spare_, effort_, watch_);
        if (!result.layout && !result.misfits.empty())
            misfits_ = result.misfits;
        return std::move(result.layout);
    }

    std::optional<Layout> filled_tightly(const Copies& copies, const Rolls& rolls) {
        return fill_tightly(job_, copies, rolls, effort_, watch_).layout;
    }

    /// The search takes as little new film as it can and lies on stock as it likes: what lies there
    /// is laid anew.
    Layout tightened(Layout layout) {
        Copies copies(job_.pieces.size());
        Rolls rolls;
        for (const UsedRoll& used : layout.rolls) {
            if (job_.rolls[used.roll].is_new)
                continue;
            rolls.push_back(used.roll);
            for (const Placement& placement : used.placements)
                copies[placement.piece].push_back(placement.copy);
        }
        if (rolls.empty())
            return layout;
        for (auto& some : copies)
            std::sort(some.begin(), some.end());
        std::optional<Layout> tight = filled_tightly(copies, rolls);
        if (!tight)
            return layout;
        std::erase_if(layout.rolls,
                      [&](const UsedRoll& used) { return !job_.rolls[used.roll].is_new; });
        layout.rolls.insert(layout.rolls.begin(), tight->rolls.begin(), tight->rolls.end());
        return layout;
    }

    void consider(std::optional<Layout> layout) {
        if (!layout)
            return;
        const Score score = judged(job_, shelf_.costs, spare_, *layout);
        if (!best_ || score < score_) {
            best_ = std::move(layout);
            score_ = score;
        }
    }

    static std::optional<Layout> joined(std::optional<Layout> one, std::optional<Layout> other) {
        if (!one || !other)
            return std::nullopt;
        for (UsedRoll& used : other->rolls)
            one->rolls.push_back(std::move(used));
        if (other->bound.length > 0)
            one->bound = other->bound;
        one->stopped = one->stopped || other->stopped;
        one->shortest = false;
        return one;
    }

    /// Stock of one batch holds all pieces, or all that must be of one batch.
    void try_batch(const Rolls& rolls) {
        const bool fixed = any(bound_);
        if (!fixed || !may_hold(rolls, bound_))
            return;
        if (may_hold(rolls, all_))
            consider(on_fewest(all_, rolls));
        if (!any(free_))
            return;
        Rolls others = new_;
        for (const std::size_t roll : stock_)
            if (std::find(rolls.begin(), rolls.end(), roll) == rolls.end())
                others.insert(others.begin(), roll);
        std::optional<Layout> must = on_fewest(bound_, rolls);
        std::optional<Layout> rest = must ? filled(free_, others) : std::nullopt;
        if (rest)
            consider(joined(std::move(must), tightened(*std::move(rest))));
    }

    /// On a single roll where one holds everything, the shortest first; else on all of them, the
    /// longest first.
    std::optional<Layout> on_fewest(const Copies& copies, Rolls rolls) {
        constexpr std::size_t most_tries = 3;
        const auto longer = [&](std::size_t a, std::size_t b) {
            return std::pair(job_.rolls[b].available, a) < std::pair(job_.rolls[a].available, b);
        };
        std::sort(rolls.begin(), rolls.end(), longer);
        std::size_t tries = 0;
        for (auto roll = rolls.rbegin(); roll != rolls.rend() && tries < most_tries; ++roll)
            if (rolls.size() > 1 && may_hold({*roll}, copies)) {
                ++tries;
                if (auto layout = filled_tightly(copies, {*roll}))
                    return layout;
            }
        return filled_tightly(copies, rolls);
    }

    /// All from new film, but for the batch-free pieces that go on stock.
    void try_new_film() {
        consider(on_new_film(all_));
        if (!any(free_) || stock_.empty())
            return;
        for (const Rolls& rolls : ever_cheaper(shelf_, stock_)) {
            Rolls some = rolls;
            some.insert(some.end(), new_.begin(), new_.end());
            std::optional<Layout> layout = filled(free_, some);
            if (!layout)
                continue;
            Copies rest = bound_;
            for (const UsedRoll& used : layout->rolls)
                if (job_.rolls[used.roll].is_new)
                    for (const Placement& placement : used.placements)
                        rest[placement.piece].push_back(placement.copy);
            std::erase_if(layout->rolls,
                          [&](const UsedRoll& used) { return job_.rolls[used.roll].is_new; });
            layout = tightened(*std::move(layout));
            layout->bound = {};
            for (auto& copies : rest)
                std::sort(copies.begin(), copies.end());
            consider(any(rest) ? joined(std::move(layout), on_new_film(rest)) : std::move(layout));
        }
    }

    bool takes_new_film(const Layout& layout) const {
        return std::any_of(layout.rolls.begin(), layout.rolls.end(),
                           [&](const UsedRoll& used) { return job_.rolls[used.roll].is_new; });
    }

    /// The batch that holds most, filled up with new film as if that were of the same batch.
    void tell_what_forces_new_film(const std::vector<Batch>& batches, Faults& faults) {
        if (batches.empty() || !any(bound_))
            return;
        const auto held = [&](const Batch& batch) {
            DoubleArea film = 0;
            for (const std::size_t roll : batch.rolls)
                film += area_of(job_.rolls[roll]);
            return film;
        };
        const Batch& most =
            *std::max_element(batches.begin(), batches.end(),
                              [&](const Batch& a, const Batch& b) { return held(a) < held(b); });
        Rolls rolls = most.rolls;
        rolls.insert(rolls.end(), new_.begin(), new_.end());
        nest::Effort quick = effort_;
        quick.amount = 1;
        const nest::Result result = fill(job_, bound_, rolls, quick, watch_);
        if (result.layout)
            faults.push_back(what_forces_new_film(most, *result.layout));
    }

    Fault what_forces_new_film(const Batch& batch, const Layout& layout) const {
        std::set<std::string> pieces;
        Um more = 0;
        constexpr std::size_t most_named = 6;
        for (const UsedRoll& used : layout.rolls) {
            if (!job_.rolls[used.roll].is_new)
                continue;
            more += used.length;
            for (const Placement& placement : used.placements)
                pieces.insert(name_of(job_, job_.pieces[placement.piece].ids[placement.copy]));
        }
        const std::string which = batch.rolls.size() == 1 ? job_.rolls[batch.rolls.front()].name
                                                          : "the stock of batch " + batch.name;
        if (pieces.empty())
            return {Severity::warning,
                    {},
                    "",
                    which + " would hold what must be of one batch; new film is cheaper",
                    ""};
        const std::size_t count = pieces.size();
        while (pieces.size() > most_named)
            pieces.erase(std::prev(pieces.end()));
        const std::string others =
            count > most_named ? " and " + std::to_string(count - most_named) + " more" : "";
        const std::string wanted =
            batch.name.empty() ? "film of its batch" : "film of batch " + batch.name;
        return {Severity::warning,
                {},
                "",
                which + " does not hold all that must be of one batch: " + listed(pieces) + others +
                    (count == 1 ? " forces" : " force") + " a new roll, and with it the whole job",
                "with about " + in_metres(more) + " more of " + wanted + " it would suffice"};
    }

    Job& job_;
    const Shelf& shelf_;
    Um spare_;
    const nest::Effort& effort_;
    const nest::Watch& watch_;
    Copies all_;
    Copies bound_; ///< all of one batch
    Copies free_;
    Rolls new_;
    Rolls stock_;
    std::optional<Layout> best_;
    Score score_{};
    std::vector<std::size_t> misfits_;
};

std::set<std::string> other_films(const std::vector<StockRoll>& stock) {
    std::set<std::string> names;
    for (const StockRoll& roll : stock)
        names.insert(roll.film);
    return names;
}

} // namespace

Shelf shelf_of(const std::vector<StockRoll>& stock, const Film& film, Faults& faults) {
    Shelf shelf;
    for (const StockRoll& roll : stock) {
        if (!roll.film.empty() && roll.film != film.name)
            continue;
        const Um width = roll.width.value_or(film.width);
        const Um trim = roll.trim.value_or(film.trim);
        if (width <= 2 * trim)
            continue;
        shelf.rolls.push_back({"stock " + roll.name, false, roll.batch, width, trim, roll.length,
                               roll.arrow_known, roll.flaws});
        shelf.costs.push_back(roll.cost);
    }
    if (shelf.rolls.empty() && !stock.empty())
        faults.push_back({Severity::warning, stock.front().place, "",
                          "no roll in stock is of the film '" + film.name + "'",
                          "the films in stock are: " + listed(other_films(stock))});
    return shelf;
}

nest::Result fill_from_shelf(Job& job, const Shelf& shelf, Um spare, const nest::Effort& effort,
                             const nest::Watch& watch, Faults& faults) {
    return FillFromShelf(job, shelf, spare, effort, watch).run(faults);
}

} // namespace pelt::order
