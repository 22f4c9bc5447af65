// SPDX-License-Identifier: MIT
#include "order/purchase.hpp"

#include <doctest/doctest.h>

#include <vector>

using namespace pelt;

namespace {

/// A film sold by the metre and by the roll of 25 yd, which is cheaper by the metre.
Film film_by_metre_and_roll() {
    Film film;
    film.width = 1'524'000;
    film.roll_length = 22'860'000;
    film.sold = {{Length::from_mm(1'000), Money::from_micros(14'200'000)},
                 {Length::from_mm(22'860), Money::from_micros(289'000'000)}};
    return film;
}

/// Every whole number of every offer that is on one roll, one by one.
std::optional<Money> cheapest_by_enumeration(const Film& film, Um need) {
    std::optional<Money> best;
    for (const Offer& offer : film.sold)
        for (std::int64_t count = 1; count * offer.by <= Length::from_um(*film.roll_length);
             ++count)
            if (count * offer.by >= Length::from_um(need) && (!best || count * offer.price < *best))
                best = count * offer.price;
    return best;
}

} // namespace

TEST_CASE("fifteen meters are one uncut length of fifteen times one meter") {
    const auto line = order::cheapest_purchase(film_by_metre_and_roll(), 14'210'400);
    REQUIRE(line);
    CHECK(line->count == 15);
    CHECK(line->by == Length::from_mm(1'000));
    CHECK(line->length() == Length::from_mm(15'000));
    CHECK(to_string(line->count * *line->price, 2) == "213.00");
}

TEST_CASE("a whole roll is bought where it costs less than its meters") {
    const auto line = order::cheapest_purchase(film_by_metre_and_roll(), 20'500'000);
    REQUIRE(line);
    CHECK(line->by == Length::from_mm(22'860));
    CHECK(line->count == 1);
}

TEST_CASE("a length that is met exactly needs no further meter") {
    const auto line = order::cheapest_purchase(film_by_metre_and_roll(), 15'000'000);
    REQUIRE(line);
    CHECK(line->count == 15);
}

TEST_CASE("nothing longer than a roll is bought") {
    Film film = film_by_metre_and_roll();
    CHECK_FALSE(order::cheapest_purchase(film, 22'860'001));
    film.sold = {{Length::from_mm(5'000), Money::from_micros(60'000'000)}};
    CHECK(order::longest_purchase(film) == 20'000'000);
    CHECK_FALSE(order::cheapest_purchase(film, 20'000'001));
}

TEST_CASE("without prices the length itself is bought and its price stays unknown") {
    Film film = film_by_metre_and_roll();
    film.sold.clear();
    const auto line = order::cheapest_purchase(film, 1'234'567);
    REQUIRE(line);
    CHECK(line->length() == Length::from_um(1'234'567));
    CHECK_FALSE(line->price);
}

TEST_CASE("yards are bought exactly") {
    Film film = film_by_metre_and_roll();
    film.sold = {{length_of(Unit::yd), Money::from_micros(31'990'000)}};
    CHECK(order::cheapest_purchase(film, 15 * 914'400)->count == 15);
    CHECK(order::cheapest_purchase(film, 15 * 914'400 + 1)->count == 16);
}

TEST_CASE("no purchase by enumeration is cheaper") {
    Film film = film_by_metre_and_roll();
    film.sold.push_back({Length::from_mm(4'500), Money::from_micros(61'000'000)});
    film.sold.push_back({length_of(Unit::yd), Money::from_micros(13'100'000)});
    for (Um need = 1'000; need <= *film.roll_length; need += 137'911) {
        CAPTURE(need);
        const auto line = order::cheapest_purchase(film, need);
        const auto expected = cheapest_by_enumeration(film, need);
        REQUIRE(line.has_value() == expected.has_value());
        CHECK(line->count * *line->price == *expected);
    }
}

TEST_CASE("a length that no roll holds is several") {
    const Film film = film_by_metre_and_roll();
    CHECK(order::lengths_for(film, 10'000'000) == std::vector<Um>{10'000'000});
    CHECK(order::lengths_for(film, 50'000'000) ==
          std::vector<Um>{22'860'000, 22'860'000, 4'280'000});
}
