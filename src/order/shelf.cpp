// SPDX-License-Identifier: MIT
#include "order/shelf.hpp"

#include "order/batches.hpp"
#include "order/buying.hpp"
#include "order/every_division.hpp"
#include "order/odd_widths.hpp"
#include "order/on_stock.hpp"
#include "order/relaying.hpp"
#include "order/short_stock.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

namespace pelt::order {
namespace {

class FillFromShelf {
public:
    FillFromShelf(Job& job, const Shelf& shelf, const SpareToBuy& spare, const nest::Effort& effort,
                  const nest::Watch& watch)
        : job_(job), shelf_(shelf), spare_(spare), asked_(effort), effort_(effort), watch_(watch),
          all_(all_copies(job)) {
        // Along outlines a search takes long, and there are many ways to use a shelf: they are
        // looked at quickly first.
        effort_.trial = effort.trial || job.by == CutBy::contour;
        job_.rolls.insert(job_.rolls.begin(), shelf.rolls.begin(), shelf.rolls.end());
        add_shapes_for_odd_widths(job_);
        for (std::size_t i = 0; i < job_.rolls.size(); ++i)
            (job_.rolls[i].is_new ? new_ : stock_).push_back(i);
        free_ = all_;
        bound_ = all_;
        for (std::size_t i = 0; i < job_.pieces.size(); ++i)
            (job_.pieces[i].batch_free ? bound_ : free_)[i].clear();
    }

    FromShelf run(Faults& faults) {
        const std::vector<Batch> batches = batches_of(shelf_);
        for (const Batch& batch : batches)
            for (const Rolls& rolls : ever_cheaper(shelf_, batch.rolls))
                try_batch(rolls);
        look_harder();
        if (job_.half_done.any() && !batches.empty())
            go_on(batches, faults);
        else
            take_new_film_if_cheaper(batches, faults);
        lay_with_effort();
        if (best_)
            return {{std::move(best_), {}}, short_stock_, cheapest_ || costs_nothing()};
        return {{std::nullopt, misfits_}, std::nullopt, false};
    }

private:
    bool holds_more(const Batch& a, const Batch& b) const {
        return area_of(job_, a.rolls) > area_of(job_, b.rolls);
    }

    std::optional<Layout> filled(const Copies& copies, const Rolls& rolls) {
        nest::Result result = fill(job_, copies, rolls, effort_, watch_);
        if (!result.layout && !result.misfits.empty())
            misfits_ = result.misfits;
        return std::move(result.layout);
    }

    std::optional<Layout> on_new_film(const Copies& copies) {
        NewFilm found = fill_new_film(job_, copies, spare_, effort_, watch_);
        if (!found.result.layout && !found.result.misfits.empty())
            misfits_ = found.result.misfits;
        cheapest_new_film_ = found.cheapest;
        return std::move(found.result.layout);
    }

    bool costs_nothing() const { return best_ && score_[0] == 0 && score_[1] == 0; }

    bool looks_quickly() const { return effort_.trial != asked_.trial; }

    /// What a quick look found no room for, where there would be film enough: the roomiest rolls
    /// are looked at with all effort, before it is said that they do not suffice.
    void look_harder() {
        if (!looks_quickly() || roomiest_.empty() || (best_ && !takes_new_film(job_, *best_)))
            return;
        if (is_hopeless(roomiest_))
            return;
        std::optional<Layout> must = fill_tightly(job_, bound_, roomiest_, asked_, watch_).layout;
        if (must && any(free_))
            must = joined(std::move(must), filled_thriftily(free_, stock_without(roomiest_)));
        consider(std::move(must));
    }

    /// Effort makes quick layouts shorter by 9 to 18 % (four shipped vehicles in hybrid): where one
    /// takes a third more film than there is, effort is not enough.
    bool is_hopeless(const Rolls& rolls) const {
        const std::size_t roll = rolls.front();
        const auto quick = fill_one(job_, bound_, roll, std::nullopt, effort_, watch_).layout;
        if (!quick)
            return false;
        const DoubleArea taken = static_cast<DoubleArea>(2 * quick->rolls.front().length) *
                                 (job_.rolls[roll].width - 2 * job_.rolls[roll].trim);
        return taken * 3 > area_of(job_, rolls) * 4;
    }

    /// All on new film is weighed with effort too, unless a quick layout of it costs a quarter
    /// more.
    bool new_film_may_be_cheaper() const {
        const std::size_t by = score_[0] == 0 ? 1 : 0; // where nothing costs anything: the length
        return !new_alone_ || (*new_alone_)[by] * 4 <= score_[by] * 5;
    }

    /// Remembers rolls that found no room where they might have it. No search covers nine tenths of
    /// a remnant with panels.
    void remember(const Rolls& rolls) {
        const DoubleArea film = area_of(job_, rolls);
        if (least_area(job_, bound_) * 10 <= film * 9 && film > area_of(job_, roomiest_))
            roomiest_ = rolls;
    }

    void lay_with_effort() {
        if (!looks_quickly() || !best_)
            return;
        Layout laid = laid_with_effort(job_, *best_, shelf_.costs, spare_, asked_, watch_);
        const bool from_stock_too = any(copies_on(job_, *best_, false));
        consider(std::move(laid));
        if (job_.half_done.any() || !from_stock_too || costs_nothing() ||
            !new_film_may_be_cheaper())
            return;
        effort_ = asked_;
        consider(on_new_film(all_));
    }

    Layout tightened(Layout layout) const {
        return order::tightened(job_, std::move(layout), effort_, watch_);
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

    /// Stock of one batch holds all pieces, or all that must be of one batch.
    void try_batch(const Rolls& rolls) {
        const bool fixed = any(bound_);
        if (!fixed || !may_hold(job_, rolls, bound_))
            return;
        std::optional<Layout> all =
            may_hold(job_, rolls, all_) ? on_fewest(all_, rolls) : std::nullopt;
        const bool holds_all = all.has_value();
        consider(std::move(all));
        std::optional<Layout> must = any(free_) ? on_fewest(bound_, rolls) : std::nullopt;
        if (must)
            consider(joined(std::move(must), filled_thriftily(free_, stock_without(rolls))));
        else if (!holds_all)
            remember(rolls);
    }

    Rolls stock_without(const Rolls& rolls) const { return left_behind(stock_, rolls); }

    Rolls and_new_film(Rolls rolls) const {
        rolls.insert(rolls.end(), new_.begin(), new_.end());
        return rolls;
    }

    std::optional<Layout> on_fewest(const Copies& copies, const Rolls& rolls) const {
        return order::on_fewest(job_, copies, rolls, effort_, watch_);
    }

    /// All from new film, but for the batch-free pieces that go on stock.
    void try_new_film() {
        std::optional<Layout> all = on_new_film(all_);
        if (all)
            new_alone_ = judged(job_, shelf_.costs, spare_, *all);
        consider(std::move(all));
        cheapest_ = stock_.empty() && cheapest_new_film_;
        if (!any(free_) || stock_.empty())
            return;
        for (const Rolls& rolls : ever_cheaper(shelf_, stock_))
            if (auto [layout, rest] = free_pieces_on(rolls); layout)
                consider(any(rest) ? joined(std::move(layout), on_new_film(rest))
                                   : std::move(layout));
    }

    struct OnStock {
        std::optional<Layout> layout; ///< none where nothing finds a place
        Copies rest;
    };

    /// As many batch-free pieces as go on these rolls; what does not is left with the others.
    OnStock free_pieces_on(const Rolls& rolls) {
        OnStock out{filled(free_, and_new_film(rolls)), bound_};
        if (!out.layout)
            return out;
        const Copies left = copies_on(job_, *out.layout, true);
        for (std::size_t i = 0; i < left.size(); ++i)
            out.rest[i].insert(out.rest[i].end(), left[i].begin(), left[i].end());
        out.layout = tightened(on_stock_alone(job_, *std::move(out.layout)));
        return out;
    }

    void take_new_film_if_cheaper(const std::vector<Batch>& batches, Faults& faults) {
        if (!costs_nothing())
            try_new_film();
        try_stock_once_more(batches);
        weigh_every_division(true);
        if (best_ && takes_new_film(job_, *best_))
            tell_what_forces_new_film(faults);
    }

    /// Work that is half done goes on in the batch that it was begun in: what the shelf does not
    /// hold of it is cut from more of the same batch, as little as can be.
    void go_on(const std::vector<Batch>& batches, Faults& faults) {
        weigh_every_division(false);
        if (!best_ && !any(bound_))
            go_on_with_anything();
        else if (!best_)
            if (const std::optional<Batch> begun = filled_up(batches);
                begun && new_film_must_match(job_, *best_))
                name_the_batch(job_, *begun);
        if (!best_ || !takes_new_film(job_, *best_))
            return;
        faults.push_back(what_is_missing(job_, *best_, job_.rolls[new_.front()].batch));
    }

    /// Nothing of it must be of one batch.
    void go_on_with_anything() { consider(filled_thriftily(free_, stock_)); }

    /// On stock as tightly as can be, the rest on new film.
    std::optional<Layout> filled_thriftily(const Copies& copies, const Rolls& rolls) {
        std::optional<Layout> layout = filled(copies, and_new_film(rolls));
        return layout ? std::optional(tightened(*std::move(layout))) : std::nullopt;
    }

    /// The batch that takes least more film, of those that hold most; its layout is then the best.
    std::optional<Batch> filled_up(std::vector<Batch> batches) {
        constexpr std::size_t most_tries = 4;
        std::stable_sort(batches.begin(), batches.end(),
                         [&](const Batch& a, const Batch& b) { return holds_more(a, b); });
        batches.resize(std::min(batches.size(), most_tries));
        std::optional<Batch> begun;
        for (const Batch& batch : batches) {
            const Score before = score_;
            consider(filled_thriftily(all_, batch.rolls));
            if (any(free_))
                if (auto [layout, rest] = free_pieces_on(stock_without(batch.rolls)); layout)
                    consider(joined(std::move(layout), filled_thriftily(rest, batch.rolls)));
            if (best_ && (!begun || score_ < before))
                begun = batch;
        }
        return begun;
    }

    /// The batch that holds most, filled up with new film as if that were of the same batch.
    void try_stock_once_more(const std::vector<Batch>& batches) {
        if (!best_ || !takes_new_film(job_, *best_) || batches.empty() || !any(bound_))
            return;
        most_ = *std::min_element(batches.begin(), batches.end(),
                                  [&](const Batch& a, const Batch& b) { return holds_more(a, b); });
        nest::Effort quick = effort_;
        quick.amount = 1;
        on_most_ = fill(job_, bound_, and_new_film(most_.rolls), quick, watch_).layout;
        if (!on_most_ || takes_new_film(job_, *on_most_))
            return;
        std::optional<Layout> all = tightened(*on_most_);
        if (any(free_))
            all = joined(std::move(all), filled_thriftily(free_, stock_without(most_.rolls)));
        if (!all) {
            on_most_.reset();
            return;
        }
        cost_on_most_ = Money::from_micros(judged(job_, shelf_.costs, spare_, *all)[0]);
        consider(std::move(all));
    }

    void tell_what_forces_new_film(Faults& faults) {
        if (!on_most_)
            return;
        short_stock_ = how_short(job_, most_, *on_most_);
        if (short_stock_->more == 0 && !job_.film.sold.empty())
            short_stock_->cost = cost_on_most_;
        for (Fault& fault : what_forces_new_film(job_, most_, *on_most_, short_stock_->cost,
                                                 Money::from_micros(score_[0])))
            faults.push_back(std::move(fault));
    }

    /// Where pieces are few, all ways to divide them among rolls.
    void weigh_every_division(bool new_film_for_all) {
        const bool has_costs = !stock_.empty() || !job_.film.sold.empty();
        if ((best_ && best_->stopped) || cheapest_ || costs_nothing() || !has_costs ||
            !can_try_every_division(job_))
            return;
        CheapestDivision found = cheapest_division(job_, shelf_, new_film_for_all, effort_, watch_);
        // Work that is half done takes new film only where the shelf holds too little.
        if (found.layout && (new_film_for_all || !takes_new_film(job_, *found.layout))) {
            const Score score = judged(job_, shelf_.costs, spare_, *found.layout);
            if (!best_ || std::tie(score[0], score[1]) < std::tie(score_[0], score_[1]))
                consider(std::move(found.layout));
        }
        cheapest_ = best_ && spare_.length == 0 && score_[0] <= found.at_least.micros();
    }

    Job& job_;
    const Shelf& shelf_;
    const SpareToBuy& spare_;
    nest::Effort asked_;
    nest::Effort effort_;
    const nest::Watch& watch_;
    Copies all_;
    Copies bound_; ///< all of one batch
    Copies free_;
    Rolls new_;
    Rolls stock_;
    Rolls roomiest_;
    Batch most_;
    std::optional<Layout> on_most_; ///< what must be of one batch
    std::optional<Money> cost_on_most_;
    std::optional<Layout> best_;
    Score score_{};
    std::optional<Score> new_alone_; ///< all on new film, at the first look
    std::optional<ShortStock> short_stock_;
    std::vector<std::size_t> misfits_;
    bool cheapest_new_film_ = false; ///< of the last copies laid on it
    bool cheapest_ = false;
};

} // namespace

FromShelf fill_from_shelf(Job& job, const Shelf& shelf, const SpareToBuy& spare,
                          const nest::Effort& effort, const nest::Watch& watch, Faults& faults) {
    return FillFromShelf(job, shelf, spare, effort, watch).run(faults);
}

} // namespace pelt::order
