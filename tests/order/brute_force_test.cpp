// SPDX-License-Identifier: MIT
// Small jobs against every way to divide their pieces among the rolls of a shelf and new ones.
// What a roll must be cut for a set of pieces is asked of the search, of each set by itself; which
// set goes on which roll, what is bought for it and what it costs is enumerated here.
//   PELT_RANDOM_JOBS=2000 test_order -tc="small jobs: *"    more of them
#include "job.hpp"
#include "nest/nest.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <optional>

namespace pelt::order_test {
namespace {

std::string number(Chance& chance, std::size_t low, std::size_t high) {
    return std::to_string(chance.between(low, high));
}

std::string random_pieces(Chance& chance) {
    std::string text;
    const std::size_t count = chance.between(1, 6);
    const bool wide = chance.below(3) == 0; // as wide as the film, so that lengths add up
    for (std::size_t i = 0; i < count; ++i) {
        text += "  p" + std::to_string(i) + ": {size: [" + number(chance, 150, 1400) + ", " +
                (wide ? "1000" : number(chance, 150, 1000)) +
                "], forward: right, edges: none, direction: " +
                (chance.below(3) == 0 ? "any" : "one-way");
        text += chance.below(4) == 0 ? ", batch free: yes}\n" : "}\n";
    }
    return text;
}

std::string random_offers(Chance& chance) {
    std::string text;
    const std::size_t count = chance.between(1, 4);
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t by =
            std::vector<std::size_t>{305, 500, 1000, 1500, 2500}[i == 0 ? 2 : chance.below(5)];
        const std::size_t cents = by * chance.between(600, 1400) / 1000;
        text += (i == 0 ? "{by: " : ", {by: ") + std::to_string(by) +
                " mm, price: " + std::to_string(cents / 100) + "." + (cents % 100 < 10 ? "0" : "") +
                std::to_string(cents % 100);
        if (i > 0 && chance.below(3) == 0)
            text += ", from: " + number(chance, 500, 2400) + " mm";
        if (i > 0 && chance.below(3) == 0)
            text += ", up to: " + number(chance, 2500, 6000) + " mm";
        text += "}";
    }
    return text;
}

std::string random_film(Chance& chance) {
    return "roll: {width: 1000 mm, trim: 0" +
           (chance.below(2) == 0 ? ", length: " + number(chance, 3000, 9000) + " mm}\n" : "}\n") +
           "direction: one-way\nallowances: {wrap: 0, handling: 0}\nsold: [" +
           random_offers(chance) + "]\n";
}

std::string random_rolls(Chance& chance) {
    std::string text;
    const bool costly = chance.below(2) == 0;
    for (std::size_t i = 0, count = chance.below(5); i < count; ++i) {
        text += "  - {name: R" + std::to_string(i) +
                ", film: F, width: " + (chance.below(4) == 0 ? number(chance, 300, 1200) : "1000") +
                ", length: " + number(chance, 400, 4500);
        const std::size_t batch = chance.below(3);
        text += batch > 0 ? ", batch: B" + std::to_string(batch) : "";
        text += costly && chance.below(2) == 0 ? ", cost: " + number(chance, 1, 12) : "";
        if (const std::size_t from = chance.between(10, 390); chance.below(4) == 0)
            text += ", flaws: [{from: " + std::to_string(from) +
                    ", to: " + std::to_string(from + 10) +
                    (chance.below(2) == 0 ? ", low: 100, high: 200}]" : "}]");
        text += "}\n";
    }
    return text;
}

/// The cheapest number of one offer, counted one by one.
std::optional<Money> price_of(const Film& film, Um need) {
    std::optional<Money> best;
    for (const Offer& offer : film.sold)
        for (std::int64_t count = 1;; ++count) {
            const Length length = count * offer.by;
            if ((film.roll_length && length > Length::from_um(*film.roll_length)) ||
                (offer.up_to && length > *offer.up_to))
                break;
            if (length < Length::from_um(need) || (offer.from && length < *offer.from))
                continue;
            if (!best || count * offer.price < *best)
                best = count * offer.price;
            break;
        }
    return best;
}

class EveryWay {
public:
    EveryWay(const Job& job, std::vector<Roll> stock, std::vector<CostOfLength> costs)
        : job_(job), rolls_(std::move(stock)), costs_(std::move(costs)), stock_(rolls_.size()),
          on_stock_(rolls_.size(), 0) {
        for (std::size_t i = 0; i < job.pieces.size(); ++i)
            for (std::size_t copy = 0; copy < job.pieces[i].ids.size(); ++copy)
                items_.push_back(i);
        // A new roll, as long as one can be bought.
        rolls_.push_back({"new", true, "", job.film.width, job.film.trim, {}, true, {}});
        put(0, "");
    }
    std::optional<Money> cheapest() const { return best_; }

private:
    using Items = std::size_t; ///< a bit each

    void put(std::size_t next, const std::string& batch) {
        if (next == items_.size()) {
            price();
            return;
        }
        const Items item = Items{1} << next;
        const bool free = job_.pieces[items_[next]].batch_free;
        // By place: a vector that grows further down moves what it holds.
        const auto put_on = [&](std::vector<Items>& rolls, std::size_t i, std::size_t roll,
                                const std::string& of) {
            if (!free && !batch.empty() && batch != of)
                return;
            rolls[i] |= item;
            if (least(roll, rolls[i]))
                put(next + 1, free ? batch : of);
            rolls[i] &= ~item;
        };
        for (std::size_t roll = 0; roll < stock_; ++roll)
            put_on(on_stock_, roll, roll,
                   rolls_[roll].batch.empty() ? "roll " + std::to_string(roll)
                                              : "batch " + rolls_[roll].batch);
        for (std::size_t i = 0; i < on_new_.size(); ++i)
            put_on(on_new_, i, stock_, "new");
        if (free || batch.empty() || batch == "new") {
            on_new_.push_back(item);
            if (least(stock_, item))
                put(next + 1, free ? batch : "new");
            on_new_.pop_back();
        }
    }

    void price() {
        Money sum;
        for (std::size_t roll = 0; roll < stock_; ++roll)
            if (on_stock_[roll] != 0)
                sum = sum + costs_[roll].of(*least(roll, on_stock_[roll]));
        for (const Items items : on_new_) {
            const std::optional<Money> one = price_of(job_.film, *least(stock_, items));
            if (!one)
                return;
            sum = sum + *one;
        }
        if (!best_ || sum < *best_)
            best_ = sum;
    }

    /// What these take of a roll; none where it does not hold them.
    std::optional<Um> least(std::size_t roll, Items items) {
        const auto key = std::pair(roll, items);
        const auto known = known_.find(key);
        if (known != known_.end())
            return known->second;
        return known_.emplace(key, laid(roll, items)).first->second;
    }

    std::optional<Um> laid(std::size_t roll, Items items) const {
        std::vector<Piece> pieces;
        for (std::size_t i = 0; i < job_.pieces.size(); ++i) {
            Piece piece = job_.pieces[i];
            piece.ids.clear();
            for (std::size_t k = 0; k < items_.size(); ++k)
                if (items_[k] == i && (items >> k & 1) != 0)
                    piece.ids.push_back(job_.pieces[i].ids.front());
            if (!piece.ids.empty())
                pieces.push_back(std::move(piece));
        }
        Roll film = rolls_[roll];
        film.is_new = true; // so that as little as can be is taken off it
        nest::Goal goal;
        goal.stages = job_.stages;
        goal.ruler = job_.film.allowances.ruler;
        nest::Effort effort;
        effort.trial = true;
        const auto result = nest::nest(pieces, std::span(&film, 1), goal, effort, {});
        return result.layout ? std::optional(result.layout->rolls.front().length) : std::nullopt;
    }

    const Job& job_;
    std::vector<Roll> rolls_; ///< the shelf's, and a new one
    std::vector<CostOfLength> costs_;
    std::size_t stock_;
    std::vector<std::size_t> items_; ///< pieces of the job
    std::vector<Items> on_stock_;
    std::vector<Items> on_new_;
    std::map<std::pair<std::size_t, Items>, std::optional<Um>> known_;
    std::optional<Money> best_;
};

struct Figures {
    int jobs = 0;
    int called_cheapest = 0;
    int dearer = 0; ///< of those that were not called so
};

void compare(const std::string& pieces, const std::string& of, const std::string& rolls,
             Figures& figures) {
    order::Request request;
    request.vehicles = {vehicle(pieces)};
    request.film = film(of);
    if (!rolls.empty())
        request.stock = stock(rolls);
    request.effort.trial = true;
    const std::vector<StockRoll> shelf = request.stock;
    const order::Outcome outcome = order::run(std::move(request));
    CAPTURE(first_fault(outcome.faults));
    REQUIRE(outcome.plan);
    REQUIRE(outcome.order.total);
    const Job& job = outcome.plan->job();
    std::vector<Roll> stock_rolls;
    std::vector<CostOfLength> costs;
    for (std::size_t i = 0; i < shelf.size(); ++i) {
        stock_rolls.push_back(job.rolls.at(i));
        costs.push_back(shelf[i].cost);
    }
    Money planned = *outcome.order.total;
    for (const UsedRoll& used : outcome.plan->layout().rolls)
        if (!job.rolls[used.roll].is_new)
            planned = planned + costs.at(used.roll).of(used.length);
    const std::optional<Money> least = EveryWay(job, stock_rolls, costs).cheapest();
    REQUIRE(least);
    ++figures.jobs;
    figures.called_cheapest += outcome.order.cheapest ? 1 : 0;
    if (outcome.order.cheapest)
        CHECK(planned <= *least);
    else if (planned > *least) {
        ++figures.dearer;
        MESSAGE(to_string(planned, 2) << " instead of " << to_string(*least, 2) << ":\n"
                                      << pieces << of << rolls);
    }
}

TEST_CASE("small jobs: never dearer than every division of the pieces among rolls") {
    Chance chance(16);
    Figures figures;
    const int jobs = asked_jobs("PELT_RANDOM_JOBS", 60);
    for (int i = 0; i < jobs; ++i) {
        const std::string pieces = random_pieces(chance);
        const std::string of = random_film(chance);
        const std::string rolls = random_rolls(chance);
        CAPTURE(i);
        CAPTURE(pieces + of + rolls);
        CHECK_NOTHROW(compare(pieces, of, rolls, figures));
    }
    MESSAGE(figures.jobs << " jobs, " << figures.called_cheapest << " called cheapest, "
                         << figures.dearer << " of the others dearer than need be");
    CHECK(figures.called_cheapest * 2 > figures.jobs);
    CHECK(figures.dearer * 200 <= figures.jobs);
}

} // namespace
} // namespace pelt::order_test
