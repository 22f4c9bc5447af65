// SPDX-License-Identifier: MIT
// What is bought, against every way to buy, one by one. The pieces are as wide as the film, so a
// layout is a division of the pieces among rolls and nothing else.
#include "job.hpp"
#include "order/purchase.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>

namespace pelt::order_test {
namespace {

constexpr Um cm = 10'000;

struct SmallCase {
    Film film;
    std::vector<Um> pieces;
};

/// One price for one length, counted one by one.
std::optional<Money> price_of_length(const Film& film, Um need) {
    std::optional<Money> best;
    for (const Offer& offer : film.sold)
        for (std::int64_t count = 1; count * offer.by <= Length::from_um(*film.roll_length);
             ++count) {
            const Length length = count * offer.by;
            if (length < Length::from_um(need) || (offer.from && length < *offer.from) ||
                (offer.up_to && length > *offer.up_to))
                continue;
            if (!best || count * offer.price < *best)
                best = count * offer.price;
        }
    return best;
}

/// Every division of the pieces among rolls.
class EveryDivision {
public:
    explicit EveryDivision(const SmallCase& of) : case_(of) { divide(0); }
    std::optional<Money> cheapest() const { return best_; }

private:
    void divide(std::size_t next) {
        if (next == case_.pieces.size()) {
            price();
            return;
        }
        for (std::size_t i = 0; i < rolls_.size(); ++i) {
            rolls_[i] += case_.pieces[next];
            divide(next + 1);
            rolls_[i] -= case_.pieces[next];
        }
        rolls_.push_back(case_.pieces[next]);
        divide(next + 1);
        rolls_.pop_back();
    }

    void price() {
        Money sum;
        for (const Um length : rolls_) {
            const auto price = price_of_length(case_.film, length);
            if (!price)
                return;
            sum = sum + *price;
        }
        if (!best_ || sum < *best_)
            best_ = sum;
    }

    const SmallCase& case_;
    std::vector<Um> rolls_;
    std::optional<Money> best_;
};

SmallCase random_case(Chance& chance) {
    SmallCase made;
    made.film = film("roll: {width: 1000 mm, length: 10 m}\ndirection: one-way\n");
    made.film.roll_length = static_cast<Um>(chance.between(100, 220)) * cm;
    const std::size_t offers = chance.between(1, 4);
    for (std::size_t i = 0; i < offers; ++i) {
        const auto by = static_cast<Um>(
            chance.below(2) == 0
                ? 10
                : chance.between(10, static_cast<std::size_t>(*made.film.roll_length / cm)));
        // A discount of up to a third, or nearly none.
        const auto price = static_cast<std::int64_t>(chance.between(200, 300)) * by * 10;
        Offer offer{Length::from_um(by * cm), Money::from_micros(price * 100)};
        if (chance.below(4) == 0)
            offer.from = Length::from_um(static_cast<Um>(chance.between(10, 60)) * cm);
        if (chance.below(4) == 0)
            offer.up_to = Length::from_um(static_cast<Um>(chance.between(60, 200)) * cm);
        made.film.sold.push_back(offer);
    }
    const std::size_t pieces = chance.between(1, 5);
    for (std::size_t i = 0; i < pieces; ++i)
        made.pieces.push_back(static_cast<Um>(chance.between(5, 90)) * cm);
    return made;
}

order::Request request_of(const SmallCase& small) {
    std::string panels;
    for (std::size_t i = 0; i < small.pieces.size(); ++i)
        panels += "  p" + std::to_string(i) + ": {size: [1000, " +
                  std::to_string(small.pieces[i] / um_per_mm) + "], forward: up, edges: none}\n";
    order::Request request;
    request.vehicles = {vehicle(panels)};
    request.film = small.film;
    return request;
}

TEST_CASE("no cheaper purchase exists: 2000 small cases, every way enumerated") {
    Chance chance(7);
    int on_several_rolls = 0;
    for (int i = 0; i < 2'000; ++i) {
        const SmallCase small = random_case(chance);
        CAPTURE(i);
        const auto expected = EveryDivision(small).cheapest();
        const auto outcome = order::run(request_of(small));
        REQUIRE(outcome.plan.has_value() == expected.has_value());
        if (!expected)
            continue;
        REQUIRE(outcome.order.total);
        CHECK(outcome.order.total->micros() == expected->micros());
        on_several_rolls += outcome.order.lines.size() > 1 ? 1 : 0;
        if (outcome.order.next_best)
            CHECK(outcome.order.next_best->more >= Money{});
    }
    CHECK(on_several_rolls > 100);
}

Film metres_and_rolls() {
    Film made = film("roll: {width: 1000 mm, length: 20 m}\ndirection: one-way\n");
    made.sold = {{Length::from_mm(1'000), Money::from_micros(20'000'000)},
                 {Length::from_mm(10'000), Money::from_micros(120'000'000)}};
    return made;
}

/// How often the searches of an order ask the watch, which each does after every share of its work.
int steps_of(order::Request request) {
    int steps = 0;
    request.watch = [&](const nest::Progress&) {
        ++steps;
        return true;
    };
    REQUIRE(order::run(std::move(request)).plan);
    return steps;
}

// Small cousin of generated job 1322: thousands of sets of lengths are cheaper than one length.
TEST_CASE("along outlines few of very many sets of lengths are tried, each in few orders") {
    order::Request request;
    request.by = CutBy::contour;
    request.vehicles = {vehicle("  a: {outline: [[0, 0], [1064, 0], [1000, 233]], forward: right}\n"
                                "  b: {outline: [[0, 0], [559, 0], [400, 1297], [60, 1200]], "
                                "sides: both}\n"
                                "  c: {outline: [[0, 0], [2282, 0], [1800, 530], [560, 400]], "
                                "sides: both, forward: down}\n")};
    request.film = film("roll: {width: 1524, length: 5000}\ndirection: one-way\n"
                        "sold: [{by: 0.1 m, price: 1.99, up to: 8 m}, {by: 5 m, price: 93.60}, "
                        "{by: 1 yd, price: 14.51}]\n");
    // One search of all effort takes 16 steps, and so does each quick one that finds no room.
    CHECK(steps_of(request) <= 16 * 2 * 45);
}

TEST_CASE("two short rolls are bought where they are cheaper than one length by the meter") {
    const auto outcome =
        order::run(request_of({metres_and_rolls(), {400 * cm, 300 * cm, 400 * cm, 300 * cm}}));
    REQUIRE(outcome.plan);
    // One length of 14 m: 280; a roll of 10 m and 4 m: 200.
    CHECK(to_string(*outcome.order.total, 2) == "200.00");
    CHECK(outcome.order.lines.size() == 2);
    for (const UsedRoll& used : outcome.plan->layout().rolls)
        CHECK(used.length <= *outcome.plan->job().rolls[used.roll].available);
}

TEST_CASE("steps of the price, a minimum order, and what is sold no longer") {
    Film made = metres_and_rolls();
    made.sold = {{Length::from_mm(1'000), Money::from_micros(20'000'000), Length::from_mm(3'000)},
                 {Length::from_mm(1'000), Money::from_micros(15'000'000), Length::from_mm(10'000)},
                 {Length::from_mm(500), Money::from_micros(9'000'000), std::nullopt,
                  Length::from_mm(2'000)}};
    const auto price = [&](Um need) {
        const auto line = order::cheapest_purchase(made, need);
        return line ? to_string(line->count * *line->price, 2) : "none";
    };
    CHECK(price(500 * um_per_mm) == "9.00");
    CHECK(price(2'000 * um_per_mm) == "36.00");
    CHECK(price(2'001 * um_per_mm) == "60.00"); // at least three metres
    CHECK(price(7'000 * um_per_mm) == "140.00");
    CHECK(price(8'000 * um_per_mm) == "150.00"); // ten at the lower price
    CHECK(price(12'500 * um_per_mm) == "195.00");
    CHECK(price(20'001 * um_per_mm) == "none");
}

TEST_CASE("the next best way and what it costs more") {
    const auto best = order::cheapest_order(metres_and_rolls(), {4'500'000}, {});
    REQUIRE(best);
    CHECK(to_string(*best->cost, 2) == "100.00");
    const auto next = order::next_best_order(metres_and_rolls(), {4'500'000}, {}, *best);
    REQUIRE(next);
    CHECK(to_string(*next->cost, 2) == "120.00");
    Film one_way = metres_and_rolls();
    one_way.sold.pop_back();
    CHECK_FALSE(order::next_best_order(one_way, {4'500'000}, {}, *best));
}

TEST_CASE("the next best way may be a roll for the spare alone") {
    Film made = film("roll: {width: 1000 mm, length: 3 m}\ndirection: one-way\n");
    made.sold = {{Length::from_mm(1'000), Money::from_micros(10'000'000), Length::from_mm(2'000)},
                 {Length::from_mm(1'000), Money::from_micros(12'000'000), std::nullopt,
                  Length::from_mm(1'000)}};
    const auto best = order::cheapest_order(made, {2'340'000, 1'980'000}, {1'480'000});
    REQUIRE(best);
    CHECK(to_string(*best->cost, 2) == "60.00"); // twice three metres
    const auto next = order::next_best_order(made, {2'340'000, 1'980'000}, {1'480'000}, *best);
    REQUIRE(next);
    CHECK(to_string(*next->cost, 2) == "62.00"); // three, two, and one of the dearer ones
    CHECK(next->lines.size() == 3);
}

/// The least cost of lines that hold each length, with `spare` more in all and a few rolls more at
/// most: every combination.
class EveryOrder {
public:
    EveryOrder(const Film& film, std::vector<Um> lengths, Um spare)
        : film_(film), lengths_(std::move(lengths)) {
        least_ = Length::from_um(std::accumulate(lengths_.begin(), lengths_.end(), spare));
        add(0, {}, {});
    }
    std::optional<Money> cheapest() const { return best_; }

private:
    void add(std::size_t roll, Length length, Money cost) {
        constexpr std::size_t most_more = 3;
        if (best_ && cost >= *best_)
            return;
        if (roll >= lengths_.size() && length >= least_) {
            best_ = cost;
            return;
        }
        if (roll >= lengths_.size() + most_more)
            return;
        for (const Offer& offer : film_.sold)
            for (std::int64_t n = 1; n * offer.by <= Length::from_um(*film_.roll_length); ++n) {
                const Length one = n * offer.by;
                const bool long_enough =
                    roll >= lengths_.size() || one >= Length::from_um(lengths_[roll]);
                if (long_enough && (!offer.from || one >= *offer.from) &&
                    (!offer.up_to || one <= *offer.up_to))
                    add(roll + 1, length + one, cost + n * offer.price);
            }
    }

    const Film& film_;
    std::vector<Um> lengths_;
    Length least_;
    std::optional<Money> best_;
};

TEST_CASE("spare film is bought where it is cheapest: 500 cases, every combination") {
    Chance chance(8);
    for (int i = 0; i < 500; ++i) {
        SmallCase small = random_case(chance);
        const Um longest = order::longest_purchase(small.film).value_or(0);
        std::vector<Um> lengths;
        for (std::size_t k = 0; k < chance.between(1, 2); ++k)
            lengths.push_back(static_cast<Um>(chance.between(5, 90)) * cm);
        const Um spare = static_cast<Um>(chance.between(0, 80)) * cm;
        if (longest < lengths.front() || longest < lengths.back())
            continue;
        CAPTURE(i);
        const auto found = order::cheapest_order(small.film, lengths, {spare});
        const auto expected = EveryOrder(small.film, lengths, spare).cheapest();
        REQUIRE(found.has_value() == expected.has_value());
        if (found) {
            CHECK(found->cost->micros() == expected->micros());
            CHECK(found->length() >= Length::from_um(lengths.front() + spare));
        }
    }
}

} // namespace
} // namespace pelt::order_test
