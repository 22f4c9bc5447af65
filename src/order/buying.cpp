// SPDX-License-Identifier: MIT
#include "order/buying.hpp"

#include "model/error.hpp"
#include "order/purchase.hpp"
#include "order/wide_pieces.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <utility>

namespace pelt::order {
namespace {

constexpr std::size_t most_rolls = 5;
constexpr std::int64_t most_lines = 60;
constexpr std::size_t most_looks = 200'000;
constexpr std::size_t few_pieces = 12;
constexpr std::size_t tries_of_few_pieces = 40;
constexpr std::size_t tries = 6;
constexpr std::size_t tries_along_outlines = 2; ///< each is a search of its own, and takes seconds

/// Lengths to buy, the longest first.
struct Set {
    std::vector<Um> lengths;
    Um total = 0;
    Money cost;
};

/// All sets of lines that are cheaper than a known way to buy and long enough together.
class CheaperSets {
public:
    CheaperSets(const std::vector<OrderLine>& lines, Money below, Um least)
        : lines_(lines), below_(below), least_(least) {}

    std::vector<Set> all() {
        add({}, 0);
        std::stable_sort(sets_.begin(), sets_.end(), [](const Set& a, const Set& b) {
            return std::tuple(a.cost, a.lengths.size(), -a.total) <
                   std::tuple(b.cost, b.lengths.size(), -b.total);
        });
        return std::move(sets_);
    }

private:
    void add(const Set& before, std::size_t from) {
        for (std::size_t i = from; i < lines_.size() && looks_ < most_looks; ++i) {
            ++looks_;
            Set set = before;
            set.cost = set.cost + lines_[i].count * *lines_[i].price;
            if (set.cost >= below_)
                continue;
            const Um length = lines_[i].length().floor_um();
            set.lengths.push_back(length);
            set.total += length;
            if (set.total >= least_)
                sets_.push_back(set);
            if (set.lengths.size() < most_rolls)
                add(set, i);
        }
    }

    const std::vector<OrderLine>& lines_; ///< the longest first
    Money below_;
    Um least_;
    std::vector<Set> sets_;
    std::size_t looks_ = 0;
};

std::size_t count_of(const Copies& copies) {
    std::size_t count = 0;
    for (const auto& some : copies)
        count += some.size();
    return count;
}

/// Each roll with the wide pieces that fall to it.
std::optional<nest::Result> fill_one_by_one(const Job& job, const std::vector<WidePiece>& pieces,
                                            const Divided& ways,
                                            const std::vector<std::size_t>& rolls,
                                            const std::vector<Um>& lengths,
                                            const nest::Effort& effort, const nest::Watch& watch) {
    Layout all;
    for (std::size_t roll = 0; roll < lengths.size(); ++roll) {
        Copies own(job.pieces.size());
        for (std::size_t i = 0; i < pieces.size(); ++i)
            if (ways.rolls[i] == roll)
                own[pieces[i].piece].push_back(pieces[i].copy);
        if (count_of(own) == 0)
            continue;
        for (auto& some : own)
            std::sort(some.begin(), some.end());
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
/// then the other orders, all of them where there are few.
std::optional<nest::Result> fill_in_some_order(const Job& job, const Copies& copies,
                                               const std::vector<std::size_t>& rolls,
                                               std::vector<Um> lengths, const nest::Effort& effort,
                                               const nest::Watch& watch) {
    constexpr int most_orders = 24;
    std::sort(lengths.begin(), lengths.end());
    const int orders = count_of(copies) <= few_pieces ? most_orders : 2;
    for (int i = 0; i < orders; ++i) {
        nest::Result found = fill_lengths(job, copies, rolls, lengths, effort, watch);
        if (found.layout)
            return found;
        if (!std::next_permutation(lengths.begin(), lengths.end()))
            break;
    }
    return std::nullopt;
}

/// The lines worth combining, the longest first. None where film is sold in so small steps that
/// buying it in one length is as cheap as can be but for a step.
std::vector<OrderLine> lines_to_combine(const Film& film, Um need) {
    for (const Offer& offer : film.sold)
        if (Length::from_um(need).pm() / offer.by.pm() > most_lines)
            return {};
    std::vector<OrderLine> lines = lines_for(film, 1, need);
    std::reverse(lines.begin(), lines.end());
    return lines;
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

Order buy(const Film& film, const std::vector<Um>& lengths, Um spare) {
    const std::optional<Purchase> best = cheapest_order(film, lengths, lengths.empty() ? 0 : spare);
    if (!best)
        throw ProgramError("a roll was planned that cannot be bought");
    Order order{best->lines, best->cost, film.currency};
    if (lengths.empty())
        order.total = Money{};
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
bool is_cheaper(const Job& job, const nest::Result& found, Um spare, Money than) {
    const auto order = cheapest_order(job.film, new_lengths(job, *found.layout), spare);
    return order && *order->cost < than;
}

} // namespace

nest::Result fill_new_film(const Job& job, const Copies& copies, Um spare,
                           const nest::Effort& effort, const nest::Watch& watch) {
    std::vector<std::size_t> rolls;
    for (std::size_t i = 0; i < job.rolls.size(); ++i)
        if (job.rolls[i].is_new)
            rolls.push_back(i);
    nest::Result best = fill(job, copies, rolls, effort, watch);
    if (!best.layout || best.layout->stopped || job.film.sold.empty())
        return best;
    const std::vector<Um> lengths = new_lengths(job, *best.layout);
    const std::optional<Purchase> known = cheapest_order(job.film, lengths, spare);
    Um all = spare;
    for (const Um length : lengths)
        all += length;
    const std::vector<OrderLine> lines = lines_to_combine(job.film, all);
    if (!known)
        return best;
    const Um least = least_worth_trying(job, lengths, best.layout->bound) + spare;
    const std::vector<Set> sets = CheaperSets(lines, *known->cost, least).all();
    const std::size_t most = count_of(copies) <= few_pieces ? tries_of_few_pieces
                             : job.by == CutBy::contour     ? tries_along_outlines
                                                            : tries;
    const std::vector<WidePiece> wide = wide_pieces(job, copies);
    std::size_t tried = 0;
    for (std::size_t i = 0; i < sets.size() && tried < most; ++i) {
        const std::vector<Um>& of_rolls = sets[i].lengths;
        const Divided ways = divided(wide, of_rolls);
        if (of_rolls.size() > rolls.size() || !ways.possible)
            continue;
        ++tried;
        if (wide.size() == count_of(copies) && !ways.rolls.empty())
            if (auto found = fill_one_by_one(job, wide, ways, rolls, of_rolls, effort, watch);
                found && is_cheaper(job, *found, spare, *known->cost))
                return *std::move(found);
        if (auto found = fill_in_some_order(job, copies, rolls, of_rolls, effort, watch);
            found && is_cheaper(job, *found, spare, *known->cost))
            return *std::move(found);
    }
    return best;
}

} // namespace pelt::order
