// SPDX-License-Identifier: MIT
#include "order/shelf.hpp"

#include "order/batches.hpp"
#include "order/buying.hpp"
#include "order/names.hpp"

#include <algorithm>
#include <iterator>
#include <set>

namespace pelt::order {
namespace {

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
        if (job_.half_done.any() && !batches.empty())
            go_on(batches, faults);
        else
            take_new_film_if_cheaper(batches, faults);
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

    void take_new_film_if_cheaper(const std::vector<Batch>& batches, Faults& faults) {
        if (!best_ || score_[0] > 0 || score_[1] > 0)
            try_new_film();
        if (best_ && takes_new_film(*best_))
            tell_what_forces_new_film(batches, faults);
    }

    /// Work that is half done goes on in the batch that it was begun in: what the shelf does not
    /// hold of it is cut from more of the same batch, as little as can be.
    void go_on(const std::vector<Batch>& batches, Faults& faults) {
        if (!best_)
            if (const std::optional<Batch> begun = filled_up(batches))
                name_the_batch(*begun);
        if (!best_ || !takes_new_film(*best_))
            return;
        const auto [pieces, more] = on_new_rolls(*best_);
        const std::string batch = job_.rolls[new_.front()].batch;
        faults.push_back({Severity::job,
                          {},
                          "",
                          "what is left is too short: " + shortened(pieces) +
                              (pieces.size() == 1 ? " finds" : " find") + " no place on it",
                          in_metres(more) + " more " +
                              (batch.empty() ? "would do, of any batch"
                                             : "of the same batch (" + batch + ") would do")});
    }

    /// The batch that takes least more film, of those that hold most; its layout is then the best.
    std::optional<Batch> filled_up(std::vector<Batch> batches) {
        constexpr std::size_t most_tries = 4;
        std::stable_sort(batches.begin(), batches.end(),
                         [&](const Batch& a, const Batch& b) { return film_of(a) > film_of(b); });
        batches.resize(std::min(batches.size(), most_tries));
        std::optional<Batch> begun;
        for (const Batch& batch : batches) {
            Rolls rolls = batch.rolls;
            rolls.insert(rolls.end(), new_.begin(), new_.end());
            std::optional<Layout> layout = filled(all_, rolls);
            const Score before = score_;
            if (layout)
                consider(tightened(*std::move(layout)));
            if (best_ && (!begun || score_ < before))
                begun = batch;
        }
        return begun;
    }

    void name_the_batch(const Batch& batch) {
        const std::string name =
            batch.name.empty() ? "that of " + job_.rolls[batch.rolls.front()].name : batch.name;
        for (const Rolls& rolls : {batch.rolls, new_})
            for (const std::size_t roll : rolls)
                job_.rolls[roll].batch = name;
    }

    DoubleArea film_of(const Batch& batch) const {
        DoubleArea film = 0;
        for (const std::size_t roll : batch.rolls)
            film += area_of(job_.rolls[roll]);
        return film;
    }

    bool takes_new_film(const Layout& layout) const {
        return std::any_of(layout.rolls.begin(), layout.rolls.end(),
                           [&](const UsedRoll& used) { return job_.rolls[used.roll].is_new; });
    }

    /// The batch that holds most, filled up with new film as if that were of the same batch.
    void tell_what_forces_new_film(const std::vector<Batch>& batches, Faults& faults) {
        if (batches.empty() || !any(bound_))
            return;
        const Batch& most =
            *std::max_element(batches.begin(), batches.end(), [&](const Batch& a, const Batch& b) {
                return film_of(a) < film_of(b);
            });
        Rolls rolls = most.rolls;
        rolls.insert(rolls.end(), new_.begin(), new_.end());
        nest::Effort quick = effort_;
        quick.amount = 1;
        const nest::Result result = fill(job_, bound_, rolls, quick, watch_);
        if (result.layout)
            faults.push_back(what_forces_new_film(most, *result.layout));
    }

    struct OnNewRolls {
        std::set<std::string> pieces;
        Um length = 0;
    };
    OnNewRolls on_new_rolls(const Layout& layout) const {
        OnNewRolls out;
        for (const UsedRoll& used : layout.rolls) {
            if (!job_.rolls[used.roll].is_new)
                continue;
            out.length += used.length;
            for (const Placement& placement : used.placements)
                out.pieces.insert(name_of(job_, job_.pieces[placement.piece].ids[placement.copy]));
        }
        return out;
    }

    /// The first few names, and how many more.
    static std::string shortened(std::set<std::string> names) {
        constexpr std::size_t most_named = 6;
        const std::size_t count = names.size();
        while (names.size() > most_named)
            names.erase(std::prev(names.end()));
        return listed(names) +
               (count > most_named ? " and " + std::to_string(count - most_named) + " more" : "");
    }

    Fault what_forces_new_film(const Batch& batch, const Layout& layout) const {
        const auto [pieces, more] = on_new_rolls(layout);
        const std::string which = batch.rolls.size() == 1 ? job_.rolls[batch.rolls.front()].name
                                                          : "the stock of batch " + batch.name;
        if (pieces.empty())
            return {Severity::warning,
                    {},
                    "",
                    which + " would hold what must be of one batch; new film is cheaper",
                    ""};
        const std::string wanted =
            batch.name.empty() ? "film of its batch" : "film of batch " + batch.name;
        return {Severity::warning,
                {},
                "",
                which + " does not hold all that must be of one batch: " + shortened(pieces) +
                    (pieces.size() == 1 ? " forces" : " force") +
                    " a new roll, and with it the whole job",
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
