// SPDX-License-Identifier: MIT
#include "order/every_division.hpp"

#include "order/batches.hpp"
#include "order/least_lengths.hpp"
#include "order/purchase.hpp"
#include "order/relaying.hpp"

#include <algorithm>
#include <compare>
#include <set>
#include <utility>

namespace pelt::order {
namespace {

// Every set is asked of every kind of film, at a few tenths of a millisecond.
constexpr std::size_t most_sets = 512;
constexpr std::size_t most_questions = 640;

/// Which of the two lengths of `Taken` is asked.
enum class Ask { found, at_least };

struct Value {
    Money cost;
    Um fresh = 0; ///< length of new film
    friend auto operator<=>(const Value&, const Value&) = default;
    friend Value operator+(Value a, Value b) { return {a.cost + b.cost, a.fresh + b.fresh}; }
};

/// Of every set the best way to lay it, and what the last roll then holds; none: no way.
struct Entry {
    Value value;
    std::size_t last = 0;
};
using Table = std::vector<std::optional<Entry>>;

/// A roll and what it holds.
struct Share {
    std::size_t roll = 0;
    std::size_t set = 0;
};

struct Way {
    Value value;
    std::vector<Share> shares; ///< stock in its order, then new rolls
};

class EveryDivision {
public:
    EveryDivision(const Job& job, const Shelf& shelf, const nest::Effort& effort,
                  const nest::Watch& watch)
        : job_(job), shelf_(shelf), effort_(effort), watch_(watch), sets_(job),
          lengths_(job, sets_, effort, watch) {
        for (std::size_t i = 0; i < job.rolls.size(); ++i)
            if (job.rolls[i].is_new)
                new_.push_back(i);
        for (std::size_t set = 0; set <= sets_.all(); ++set) {
            parts_.emplace_back();
            for (std::size_t part = 1; part <= set; ++part)
                if (sets_.is_part(part, set))
                    parts_.back().push_back(part);
        }
    }

    CheapestDivision run(bool new_film_for_all) {
        std::vector<std::optional<Batch>> of_all; // where everything may lie; none: new film
        if (new_film_for_all || sets_.is_batch_free(sets_.all()))
            of_all.emplace_back();
        if (!sets_.is_batch_free(sets_.all()))
            for (Batch& batch : batches_of(shelf_))
                of_all.emplace_back(std::move(batch));
        std::optional<Way> found;
        std::optional<Way> least;
        for (const std::optional<Batch>& batch : of_all) {
            keep_better(found, best_way(batch, Ask::found));
            keep_better(least, best_way(batch, Ask::at_least));
        }
        CheapestDivision out;
        if (least && !lengths_.stopped())
            out.at_least = least->value.cost;
        if (found && found->shares.size() <= stock_in(*found) + new_.size())
            out.layout = layout_of(*found);
        return out;
    }

private:
    static void keep_better(std::optional<Way>& best, std::optional<Way> way) {
        if (way && (!best || way->value < best->value))
            best = std::move(way);
    }

    std::size_t stock_in(const Way& way) const {
        return static_cast<std::size_t>(
            std::count_if(way.shares.begin(), way.shares.end(),
                          [&](const Share& share) { return !job_.rolls[share.roll].is_new; }));
    }

    std::optional<Value> value_of(std::size_t roll, std::size_t set, Ask ask) {
        const Taken& taken = lengths_.of(roll, set);
        const Um length = ask == Ask::found ? taken.length : taken.at_least;
        if (length >= Taken::never)
            return std::nullopt;
        if (!job_.rolls[roll].is_new)
            return Value{shelf_.costs[roll].of(length), 0};
        const std::optional<OrderLine> line = cheapest_purchase(job_.film, length);
        if (!line)
            return std::nullopt;
        return Value{line->price ? line->count * *line->price : Money{}, length};
    }

    static void keep_better(std::optional<Entry>& best, const std::optional<Entry>& rest,
                            const std::optional<Value>& more, std::size_t part) {
        if (!rest || !more)
            return;
        const Value value = rest->value + *more;
        if (!best || value < best->value)
            best = Entry{value, part};
    }

    /// With one more roll from stock.
    Table with(const Table& before, std::size_t roll, bool takes_all, Ask ask) {
        Table out = before;
        for (std::optional<Entry>& entry : out)
            if (entry)
                entry->last = 0;
        for (std::size_t part = 1; part < out.size(); ++part) {
            if (!takes_all && !sets_.is_batch_free(part))
                continue;
            const std::optional<Value> more = value_of(roll, part, ask);
            for (std::size_t set = part; more && set < out.size(); ++set)
                if (sets_.is_part(part, set))
                    keep_better(out[set], before[set - part], more, part);
        }
        return out;
    }

    Table on_new_film(bool takes_all, Ask ask) {
        Table out(sets_.all() + 1);
        out[0] = Entry{};
        for (std::size_t set = 1; set < out.size() && !new_.empty(); ++set)
            for (const std::size_t part : parts_[set])
                if ((takes_all || sets_.is_batch_free(part)) && (new_.size() > 1 || part == set))
                    keep_better(out[set], out[set - part], value_of(new_.front(), part, ask), part);
        return out;
    }

    /// What must be of one batch lies on that batch of stock, or on new film.
    std::optional<Way> best_way(const std::optional<Batch>& batch, Ask ask) {
        std::vector<Table> tables(1, Table(sets_.all() + 1));
        tables.front().front() = Entry{};
        for (std::size_t roll = 0; roll < shelf_.rolls.size(); ++roll) {
            const bool is_in = batch && std::find(batch->rolls.begin(), batch->rolls.end(), roll) !=
                                            batch->rolls.end();
            tables.push_back(with(tables.back(), roll, is_in, ask));
        }
        const Table fresh = on_new_film(!batch, ask);
        std::optional<Entry> best; // its `last`: all that lies on new film
        for (std::size_t part = 0; part <= sets_.all(); ++part)
            if (fresh[part] && sets_.is_part(part, sets_.all()))
                keep_better(best, tables.back()[sets_.all() - part], fresh[part]->value, part);
        if (!best)
            return std::nullopt;
        Way way{best->value, {}};
        std::size_t left = sets_.all() - best->last;
        for (std::size_t roll = shelf_.rolls.size(); roll-- > 0;) {
            const std::size_t last = tables[roll + 1][left]->last;
            if (last > 0)
                way.shares.push_back({roll, last});
            left -= last;
        }
        std::reverse(way.shares.begin(), way.shares.end());
        std::size_t next = 0;
        for (std::size_t rest = best->last; rest > 0; rest -= fresh[rest]->last)
            way.shares.push_back({new_.at(next++), fresh[rest]->last});
        return way;
    }

    Layout layout_of(const Way& way) {
        Layout out;
        std::vector<std::size_t> taken(job_.pieces.size(), 0);
        std::vector<Share> fresh;
        for (const Share& share : way.shares) {
            Layout one = one_roll(share, taken);
            one.rolls.front().roll = share.roll;
            out.rolls.push_back(std::move(one.rolls.front()));
            out.stopped = out.stopped || one.stopped;
            if (job_.rolls[share.roll].is_new) {
                fresh.push_back(share);
                out.bound = one.bound.length > out.bound.length ? one.bound : out.bound;
                out.shortest = one.shortest && way.shares.size() == 1;
            }
            for (std::size_t i = 0; i < taken.size(); ++i)
                taken[i] += sets_.of(share.set, i);
        }
        if (fresh.size() > 1)
            out.bound = bound_of(fresh, out.bound);
        return out;
    }

    /// With all effort, where that is not longer than what is known.
    Layout one_roll(const Share& share, const std::vector<std::size_t>& taken) {
        const std::size_t like = job_.rolls[share.roll].is_new ? new_.front() : share.roll;
        const Taken& known = lengths_.of(like, share.set);
        nest::Result again = fill_one(job_, sets_.copies(share.set, taken), share.roll,
                                      known.length, effort_, watch_);
        if (again.layout) {
            again.layout->shortest = again.layout->rolls.front().length <= known.at_least;
            return *std::move(again.layout);
        }
        Layout layout = *known.layout;
        for (Placement& placement : layout.rolls.front().placements)
            placement.copy += taken[placement.piece];
        return layout;
    }

    /// Laid end to end, several rolls are one strip.
    Bound bound_of(const std::vector<Share>& fresh, Bound of_one) {
        std::size_t all = 0;
        for (const Share& share : fresh)
            all += share.set;
        const Taken& strip = lengths_.on_endless(new_.front(), all);
        return lengths_.one_shape_each() && strip.layout ? strip.layout->bound : std::move(of_one);
    }

    const Job& job_;
    const Shelf& shelf_;
    const nest::Effort& effort_;
    const nest::Watch& watch_;
    PieceSets sets_;
    LeastLengths lengths_;
    std::vector<std::size_t> new_;
    std::vector<std::vector<std::size_t>> parts_; ///< by set, of one piece and more
};

} // namespace

bool can_try_every_division(const Job& job) {
    if (job.by != CutBy::straight || job.in_order)
        return false;
    const std::optional<std::size_t> sets = PieceSets::count(job, most_sets);
    return sets && *sets * kinds_of_film(job) <= most_questions;
}

CheapestDivision cheapest_division(const Job& job, const Shelf& shelf, bool new_film_for_all,
                                   const nest::Effort& effort, const nest::Watch& watch) {
    return EveryDivision(job, shelf, effort, watch).run(new_film_for_all);
}

} // namespace pelt::order
