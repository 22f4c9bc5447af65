// SPDX-License-Identifier: MIT
#include "order/buying.hpp"

#include "model/error.hpp"
#include "order/batches.hpp"
#include "order/cheaper_sets.hpp"
#include "order/least_lengths.hpp"
#include "order/purchase.hpp"
#include "order/relaying.hpp"
#include "order/wide_pieces.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <utility>

namespace pelt::order {
namespace {

constexpr std::size_t few_pieces = 12;
constexpr std::size_t tries_of_few_pieces = 40;
constexpr std::size_t tries = 6;
constexpr int part_for_a_set = 4;

/// Each roll with the wide pieces that fall to it.
std::optional<nest::Result> fill_one_by_one(const Job& job, const std::vector<WidePiece>& pieces,
                                            const Divided& ways,
                                            const std::vector<std::size_t>& rolls,
                                            const std::vector<Um>& lengths,
                                            const nest::Effort& effort, const nest::Watch& watch) {
    Layout all;
    for (std::size_t roll = 0; roll < lengths.size(); ++roll) {
        const Copies own = copies_on_roll(job, pieces, ways, roll);
        if (!any(own))
            continue;
        nest::Result found = fill_lengths(job, own, {rolls[roll]}, {lengths[roll]}, effort, watch);
        if (!found.layout)
            return std::nullopt;
        all.rolls.push_back(std::move(found.layout->rolls.front()));
        // On each roll no less than its bound, so no less than their sum in this division; of all
        // divisions none is shorter, as the pieces' lengths add up wherever they lie.
        all.bound.length += found.layout->bound.length;
        all.bound.argument = found.layout->bound.argument;
    }
    return nest::Result{std::move(all), {}};
}

/// The search fills rolls in the order given, which decides what goes where: short rolls first,
/// then the other orders, all of them where pieces are few and cut straight. Along outlines a
/// search takes long, and places pieces on other rolls itself.
std::optional<nest::Result> fill_in_some_order(const Job& job, const Copies& copies,
                                               const std::vector<std::size_t>& rolls,
                                               std::vector<Um> lengths, const nest::Effort& effort,
                                               const nest::Watch& watch) {
    constexpr int most_orders = 24;
    std::sort(lengths.begin(), lengths.end());
    const bool all_orders = job.by == CutBy::straight && count_of(copies) <= few_pieces;
    const int orders = all_orders ? most_orders : 2;
    for (int i = 0; i < orders; ++i) {
        nest::Result found = fill_lengths(job, copies, rolls, lengths, effort, watch);
        if (found.layout)
            return found;
        if (!std::next_permutation(lengths.begin(), lengths.end()))
            break;
    }
    return std::nullopt;
}

/// Less film than this is not worth a try: what the known layout takes, or the proved bound where
/// straight cuts lie on several rolls. Along outlines a second search hardly ever gets by with less
/// than the first.
Um least_worth_trying(const Job& job, const std::vector<Um>& lengths, const Bound& bound) {
    if (job.by == CutBy::straight && lengths.size() > 1)
        return bound.length;
    return std::accumulate(lengths.begin(), lengths.end(), Um{0});
}

} // namespace

std::vector<Um> new_lengths(const Job& job, const Layout& layout) {
    std::vector<Um> lengths;
    for (const UsedRoll& used : layout.rolls)
        if (job.rolls[used.roll].is_new)
            lengths.push_back(used.length);
    return lengths;
}

Order buy(const Film& film, const std::vector<Um>& lengths, const SpareToBuy& spare) {
    const std::optional<Purchase> best = cheapest_order(film, lengths, spare);
    if (!best)
        throw ProgramError("a roll was planned that cannot be bought");
    Order order{best->lines, best->cost, film.currency};
    if (const auto next = next_best_order(film, lengths, spare, *best))
        order.next_best = {next->lines, *next->cost, *next->cost - *best->cost};
    return order;
}

void set_what_is_bought(Job& job, const Layout& layout, Order& order) {
    std::size_t line = 0;
    for (const UsedRoll& used : layout.rolls) {
        Roll& roll = job.rolls[used.roll];
        if (!roll.is_new)
            continue;
        roll.available = order.lines[line].length().floor_um();
        order.lines[line++].batch = roll.batch;
    }
}

namespace {

/// With the spare on top of what the layout takes.
bool is_cheaper(const Job& job, const nest::Result& found, const SpareToBuy& spare, Money than) {
    const auto order = cheapest_order(job.film, new_lengths(job, *found.layout), spare);
    return order && *order->cost < than;
}

class NewFilmFiller {
public:
    NewFilmFiller(const Job& job, const Copies& copies, const SpareToBuy& spare,
                  const nest::Effort& effort, const nest::Watch& watch)
        : job_(job), copies_(copies), spare_(spare), effort_(effort), watch_(watch),
          shortest_piece_(least_along(job, copies)) {
        for (std::size_t i = 0; i < job.rolls.size(); ++i)
            if (job.rolls[i].is_new)
                rolls_.push_back(i);
    }

    NewFilm run() {
        nest::Result first = fill(job_, copies_, rolls_, effort_, watch_);
        if (!first.layout || job_.film.sold.empty())
            return {std::move(first), false};
        const std::vector<Um> lengths = new_lengths(job_, *first.layout);
        const std::optional<Purchase> known = cheapest_order(job_.film, lengths, spare_);
        if (!known)
            return {std::move(first), false};
        const Um least = least_of(*first.layout) + spare_.length;
        const std::optional<Money> least_money = least_cost(job_.film, least);
        if (least_money && *least_money >= *known->cost)
            return {std::move(first), true};
        if (first.layout->stopped)
            return {std::move(first), false};
        return cheaper(std::move(first), *known->cost, least);
    }

private:
    /// Proved: no strip that holds the pieces is shorter, nor are rolls together, as laid end to
    /// end (with a gap between two along outlines) they are one strip.
    Um least_of(const Layout& layout) const {
        const Um strip = least_strip(job_, copies_, job_.rolls[rolls_.front()], layout);
        if (job_.by == CutBy::straight)
            return strip;
        return strip - job_.film.allowances.gap * static_cast<Um>(count_of(copies_) - 1);
    }

    /// Sets of lengths, the cheapest first, until one holds the pieces.
    NewFilm cheaper(nest::Result first, Money than, Um least) const {
        const std::vector<Um> lengths = new_lengths(job_, *first.layout);
        const Um known = std::accumulate(lengths.begin(), lengths.end(), spare_.length);
        const Um worth_trying =
            least_worth_trying(job_, lengths, first.layout->bound) + spare_.length;
        const CheaperSets ways = cheaper_sets(job_.film, worth_trying, known, than);
        const std::vector<WidePiece> wide = wide_pieces(job_, copies_);
        // Sets that were found too small, not proved to be, leave it open which one is cheapest.
        bool open = !ways.all || worth_trying > least;
        std::size_t tried = 0;
        std::optional<Set> cheapest_tried;
        for (const Set& set : ways.sets) {
            const Divided division = divided(wide, set.lengths);
            if (spare_.length == 0 && has_a_useless_roll(set))
                continue; // a set without that roll is cheaper and holds as much
            if (set.lengths.size() > rolls_.size() || !division.possible) {
                open = open || (division.possible && spare_.length > 0);
                continue;
            }
            if (tried++ >= most_tries()) {
                open = true;
                break;
            }
            if (auto found = fill_set(set, wide, division, than)) {
                const auto order =
                    cheapest_order(job_.film, new_lengths(job_, *found->layout), spare_);
                return {*std::move(found), !open && *order->cost <= set.cost};
            }
            open = true;
            if (!cheapest_tried)
                cheapest_tried = set;
        }
        if (cheapest_tried && looks_quickly())
            if (auto found = filled_with_effort(*cheapest_tried, than))
                return {*std::move(found), false};
        return {std::move(first), !open};
    }

    /// One that is too short for every piece.
    bool has_a_useless_roll(const Set& set) const {
        return *std::min_element(set.lengths.begin(), set.lengths.end()) < shortest_piece_;
    }

    /// Along outlines each search takes seconds: sets are tried quickly, and one with all effort.
    bool looks_quickly() const { return job_.by == CutBy::contour && !effort_.trial; }

    nest::Effort effort_of_a_try() const {
        nest::Effort effort = effort_;
        effort.trial = effort.trial || looks_quickly();
        return effort;
    }

    /// With a quarter of it, as it comes on top of the search for the first layout; in the turns of
    /// its shapes only, which takes half as long; the longest roll first.
    std::optional<nest::Result> filled_with_effort(const Set& set, Money than) const {
        Job job = job_;
        job.free_turns = false;
        nest::Effort effort = effort_;
        effort.part *= part_for_a_set;
        nest::Result found = fill_lengths(job, copies_, rolls_, set.lengths, effort, watch_);
        if (!found.layout || !is_cheaper(job_, found, spare_, than))
            return std::nullopt;
        return found;
    }

    std::size_t most_tries() const {
        return count_of(copies_) <= few_pieces ? tries_of_few_pieces : tries;
    }

    std::optional<nest::Result> fill_set(const Set& set, const std::vector<WidePiece>& wide,
                                         const Divided& division, Money than) const {
        const nest::Effort effort = effort_of_a_try();
        if (wide.size() == count_of(copies_) && !division.rolls.empty())
            if (auto found =
                    fill_one_by_one(job_, wide, division, rolls_, set.lengths, effort, watch_);
                found && is_cheaper(job_, *found, spare_, than))
                return found;
        if (auto found = fill_in_some_order(job_, copies_, rolls_, set.lengths, effort, watch_);
            found && is_cheaper(job_, *found, spare_, than))
            return found;
        return std::nullopt;
    }

    const Job& job_;
    const Copies& copies_;
    const SpareToBuy& spare_;
    const nest::Effort& effort_;
    const nest::Watch& watch_;
    Um shortest_piece_; ///< no piece takes less of a roll, however it lies
    std::vector<std::size_t> rolls_;
};

} // namespace

NewFilm fill_new_film(const Job& job, const Copies& copies, const SpareToBuy& spare,
                      const nest::Effort& effort, const nest::Watch& watch) {
    return NewFilmFiller(job, copies, spare, effort, watch).run();
}

} // namespace pelt::order
