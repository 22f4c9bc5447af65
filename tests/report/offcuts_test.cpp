// SPDX-License-Identifier: MIT
// What is worth keeping, written as a stock file has it and read again: random jobs with random
// shelves.
#include "order/order.hpp"
#include "random_figures.hpp"
#include "read/read.hpp"
#include "report/offcuts.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <vector>

namespace {

using namespace pelt;
using test::Dice;

std::shared_ptr<const Source> source(std::string text) {
    return std::make_shared<const Source>(Source{"t.yaml", std::move(text)});
}

std::string number(Dice& dice, int low, int high) {
    return std::to_string(dice.whole(low, high));
}

std::string panels(Dice& dice) {
    std::string text = "vehicle: V\ndemonstration: yes\npanels:\n";
    for (int i = dice.whole(1, 4); i > 0; --i)
        text += "  p" + std::to_string(i) + ": {size: [" + number(dice, 100, 900) + ", " +
                number(dice, 100, 900) + "], direction: any, edges: none}\n";
    return text;
}

std::string shelf(Dice& dice) {
    static const std::vector<std::string> names{"A", "shelf 3", "\"Überrest \\\"7\\\"\"",
                                                "\"# of: {x}\""};
    static const std::vector<std::string> costs{"3", "0.123456", "{by: 1 yd, price: 4.5}"};
    std::string text = "stock:\n";
    for (std::size_t i = 0; i < names.size(); ++i) {
        text +=
            "  - {name: " + names[i] + ", film: 'Red: no. 1', width: " + number(dice, 901, 1500) +
            ", length: " + number(dice, 2'000, 9'000) + ".7, batch: 'B " + number(dice, 1, 2) + "'";
        text += dice.whole(0, 1) == 0 ? ", arrow: unknown" : "";
        text += dice.whole(0, 1) == 0 ? ", trim: 3.25" : "";
        text += dice.whole(0, 1) == 0 ? ", cost: " + costs[i % costs.size()] : "";
        text += dice.whole(0, 1) == 0
                    ? ", flaws: [{from: 900.5, to: " + number(dice, 901, 1999) +
                          ".5, low: 10, high: 80.25}, {from: 1999.5, to: 9000}]}\n"
                    : "}\n";
    }
    return text;
}

report::Sheet planned(Dice& dice) {
    order::Request request;
    request.vehicles = {*read::vehicle(source(panels(dice))).value};
    request.film =
        *read::film(source("film: 'Red: no. 1'\ndemonstration: yes\nroll: {width: 1524 "
                           "mm, trim: 6 mm, length: 9 m}\ndirection: any\nworth keeping: "
                           "{length: 200 mm, width: 100 mm}\nsold: [{by: 1 m, price: "
                           "10}]\ncurrency: EUR\n"))
             .value;
    request.stock = read::stock(source(shelf(dice))).value->rolls;
    request.effort.trial = true;
    order::Outcome outcome = order::run(std::move(request));
    REQUIRE(outcome.plan);
    return {.plan = *outcome.plan, .order = outcome.order, .warnings = outcome.faults};
}

/// Never more film than there is: sizes round down, by less than `step`; flaws outwards.
void expect_the_same(const report::Offcut& offcut, const StockRoll& roll, Um step) {
    const auto rounded_down = [&](Um is, Um was) { return is <= was && was - is < step; };
    CHECK(roll.name == offcut.name);
    CHECK(roll.film == offcut.film);
    CHECK(roll.batch == offcut.batch);
    CHECK(roll.arrow_known == offcut.arrow_known);
    CHECK(roll.cost == offcut.cost);
    REQUIRE(roll.width);
    CHECK(rounded_down(*roll.width, offcut.width));
    CHECK(rounded_down(roll.length, offcut.length));
    const Um trim = roll.trim.value_or(6'000);
    CHECK((trim >= offcut.trim && trim - offcut.trim < step));
    REQUIRE(roll.flaws.size() == offcut.flaws.size());
    for (std::size_t i = 0; i < roll.flaws.size(); ++i) {
        const Flaw& is = roll.flaws[i];
        const Flaw& was = offcut.flaws[i];
        CHECK(rounded_down(is.from, was.from));
        CHECK((is.to >= was.to && is.to - was.to < step));
        CHECK(is.low.has_value() == was.low.has_value());
        if (is.low && was.low)
            CHECK(rounded_down(*is.low, *was.low));
    }
}

TEST_CASE("an offcut just as long and as wide as what is worth keeping is kept") {
    // 1 m is bought and 700 mm of it cut, to 900 of the 1000 mm between the trims.
    const auto kept = [](const std::string& least) {
        order::Request request;
        request.vehicles = {
            *read::vehicle(source("vehicle: V\npanels:\n  p: {size: [700, 900], forward: right, "
                                  "edges: none}\n"))
                 .value};
        request.film =
            *read::film(source("film: F\nroll: {width: 1012 mm, trim: 6 mm}\ndirection: one-way\n"
                               "allowances: {handling: 0}\nsold: [{by: 1 m, price: 10}]\n"
                               "worth keeping: " +
                               least + "\n"))
                 .value;
        const order::Outcome outcome = order::run(std::move(request));
        std::vector<std::string> names;
        for (const report::Offcut& offcut : report::offcuts_of({*outcome.plan, outcome.order, {}}))
            names.push_back(offcut.name);
        return names;
    };
    using Names = std::vector<std::string>;
    CHECK(kept("{length: 300 mm, width: 1012 mm}") == Names{"rest of new 1"});
    CHECK(kept("{length: 300.001 mm, width: 1012 mm}") == Names{});
    CHECK(kept("{length: 300 mm, width: 1012.001 mm}") == Names{});
    CHECK(kept("{length: 700 mm, width: 100 mm}") == Names{"rest of new 1 offcut 1"});
    CHECK(kept("{length: 700.001 mm, width: 100 mm}") == Names{});
    CHECK(kept("{length: 700 mm, width: 100.001 mm}") == Names{});
}

TEST_CASE("what is worth keeping is read back from the lines of the sheet: 200 jobs") {
    Dice dice(3);
    int entries = 0;
    int with_cost = 0;
    for (int i = 0; i < 200; ++i) {
        const report::Sheet sheet = planned(dice);
        const Unit unit = i % 4 == 0 ? Unit::in : Unit::mm;
        const report::Measures measures(unit);
        std::string text = "stock:\n";
        const std::vector<report::Offcut> kept = report::offcuts_of(sheet);
        if (kept.empty())
            continue;
        for (const report::Offcut& offcut : kept)
            text += "  - " + report::stock_entry(offcut, sheet.plan.job().film, measures) + "\n";
        CAPTURE(text);
        const auto again = read::stock(source(text));
        REQUIRE(again.value);
        CHECK(again.faults.empty());
        REQUIRE(again.value->rolls.size() == kept.size());
        for (std::size_t k = 0; k < kept.size(); ++k) {
            expect_the_same(kept[k], again.value->rolls[k], unit == Unit::in ? 3'175 : 1'000);
            with_cost += kept[k].cost.price > Money{} ? 1 : 0;
            ++entries;
        }
    }
    CHECK(entries > 200);
    CHECK(with_cost > 5);
}

} // namespace
