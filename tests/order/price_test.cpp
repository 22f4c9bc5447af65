// SPDX-License-Identifier: MIT
// Prices against cases worked by hand, and sums of random shops. The tax rates are examples.
#include "nest/random.hpp"
#include "order/price.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <string>

using pelt::Money;
using pelt::Price;
using pelt::Share;
using pelt::Shop;
using pelt::TaxOn;
using pelt::order::price_of;

namespace {

Money cents(std::int64_t amount) {
    return Money::from_micros(amount * 10'000);
}

Share percent(std::int64_t whole) {
    return {whole * 10'000};
}

/// 60.00 an hour, 25 % on film, 15 % on consumables, 19 % on all.
Shop usual_shop() {
    Shop shop;
    shop.rate = cents(60'00);
    shop.film_mark_up = percent(25);
    shop.consumables_mark_up = percent(15);
    shop.taxes = {{"VAT", percent(19), TaxOn::all}};
    return shop;
}

Money sum_of_lines(const Price& price) {
    return price.film.value_or(Money{}) + price.consumables.value_or(Money{}) +
           price.labor.value_or(Money{}) + price.adjustment;
}

} // namespace

TEST_CASE("film, consumables, labor and tax, worked by hand") {
    // Film 213.00 + 25 % = 266.25; consumables 41.90 + 15 % = 48.185 -> 48.19 (half up);
    // 30 h 30 min at 60.00 = 1830.00; net 2144.44; 19 % = 407.4436 -> 407.44; total 2551.88.
    const Price price =
        price_of({cents(213'00), cents(41'90), 30 * 60 + 30}, usual_shop(), "EUR", 2);
    CHECK(*price.film == cents(266'25));
    CHECK(*price.consumables == cents(48'19));
    CHECK(*price.labor == cents(1830'00));
    CHECK(price.adjustment == Money{});
    CHECK(*price.net == cents(2144'44));
    CHECK(price.tax == cents(407'44));
    CHECK(*price.total == cents(2551'88));
}

TEST_CASE("a half of the minor unit goes up") {
    Shop shop;
    shop.taxes = {{"tax", percent(5), TaxOn::all}};
    // 5 % of 0.90 is 0.045.
    CHECK(price_of({cents(90), {}, 0}, shop, "EUR", 2).tax == cents(5));
    // 5 % of 30 yen is 1.5: the yen has no minor unit (ISO 4217).
    CHECK(price_of({Money::from_micros(30'000'000), {}, 0}, shop, "JPY", 0).tax ==
          Money::from_micros(2'000'000));
}

TEST_CASE("taxes on film or labor alone") {
    Shop shop = usual_shop();
    shop.taxes = {{"sales tax", percent(7), TaxOn::film},
                  {"service tax", percent(10), TaxOn::labor}};
    const Price price = price_of({cents(200'00), {}, 60}, shop, "USD", 2);
    CHECK(*price.net == cents(310'00)); // 250 + 60
    CHECK(price.taxes[0].amount == cents(17'50));
    CHECK(price.taxes[1].amount == cents(6'00));
    CHECK(*price.total == cents(333'50));
}

TEST_CASE("a small job is brought up to the minimum") {
    Shop shop = usual_shop();
    shop.minimum = cents(150'00);
    const Price price = price_of({cents(10'00), {}, 60}, shop, "EUR", 2);
    CHECK(price.adjustment == cents(77'50)); // 150 - 12.50 - 60
    CHECK(*price.net == cents(150'00));
    CHECK(*price.total == cents(178'50));
}

TEST_CASE("the customer's price is rounded and the net price worked back") {
    Shop shop = usual_shop();
    shop.round_to = cents(10'00);
    const Price price = price_of({cents(213'00), cents(41'90), 1830}, shop, "EUR", 2);
    CHECK(*price.total == cents(2550'00)); // 2551.88
    CHECK(*price.net == cents(2142'86));   // 2550 / 1.19 = 2142.857
    CHECK(price.tax == cents(407'14));
    CHECK(price.adjustment == cents(-1'58));
    // A job of less than half the step is not given away.
    shop.round_to = cents(100'00);
    CHECK(*price_of({cents(10'00), {}, 0}, shop, "EUR", 2).total == cents(100'00));
}

TEST_CASE("without a rate labor is left out, without film and rate there is no price") {
    Shop shop;
    const Price price = price_of({cents(10'00), {}, 600}, shop, "EUR", 2);
    CHECK_FALSE(price.labor);
    CHECK(*price.total == cents(10'00));
    CHECK_FALSE(price_of({{}, cents(5), 600}, shop, "EUR", 2).total);
}

TEST_CASE("random shops and jobs: lines add up to the total in whole minor units") {
    const char* asked = std::getenv("PELT_RANDOM_JOBS");
    const int jobs = asked != nullptr ? std::atoi(asked) : 10'000;
    pelt::nest::Random random(11);
    for (int job = 0; job < jobs; ++job) {
        CAPTURE(job);
        const int digits = static_cast<int>(random.below(3)) + (random.below(9) == 0 ? 1 : 0);
        std::int64_t unit = Money::per_unit;
        for (int i = 0; i < digits; ++i)
            unit /= 10;
        const auto amount = [&](std::uint64_t most) {
            return Money::from_micros(static_cast<std::int64_t>(random.below(most)) * 100);
        };
        Shop shop;
        if (random.below(5) > 0)
            shop.rate = amount(1'000'000);
        shop.film_mark_up = {static_cast<std::int64_t>(random.below(800'000))};
        shop.consumables_mark_up = {static_cast<std::int64_t>(random.below(800'000))};
        for (std::size_t tax = random.below(4); tax > 0; --tax)
            shop.taxes.push_back({std::to_string(tax),
                                  {static_cast<std::int64_t>(random.below(300'000))},
                                  static_cast<TaxOn>(random.below(3))});
        if (random.below(3) == 0)
            shop.minimum = amount(20'000'000);
        if (random.below(2) == 0)
            shop.round_to =
                Money::from_micros(unit * (1 + static_cast<std::int64_t>(random.below(2'000))));
        const Price price = price_of(
            {amount(50'000'000), amount(2'000'000), static_cast<double>(random.below(6'000))}, shop,
            "XXX", digits);
        REQUIRE(price.total);
        CHECK(sum_of_lines(price) == *price.net);
        Money taxes;
        for (const pelt::TaxLine& tax : price.taxes) {
            CHECK(tax.amount.micros() % unit == 0);
            taxes = taxes + tax.amount;
        }
        CHECK(taxes == price.tax);
        CHECK(*price.net + price.tax == *price.total);
        CHECK(price.net->micros() % unit == 0);
        if (shop.round_to)
            CHECK(price.total->micros() % shop.round_to->micros() == 0);
        else if (shop.minimum)
            CHECK(*price.net >= pelt::order::to_minor_unit(*shop.minimum, digits));
    }
}
