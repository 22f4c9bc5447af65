// SPDX-License-Identifier: MIT
#include "files.hpp"

#include <doctest/doctest.h>

#include <string>

namespace pelt::read_test {
namespace {

Film film_of(const std::string& text) {
    const auto reading = read::film(file(text));
    for (const std::string& line : told(reading))
        FAIL_CHECK(line);
    REQUIRE(reading.value.has_value());
    return *reading.value;
}

TEST_CASE("a whole film file") {
    const Film film = film_of(
        "film: Satin hybrid\n"
        "demonstration: yes\n"
        "kind: hybrid\n"
        "holds metal: no\n"
        "roll: {width: 1524 mm, trim: 6 mm, length: 22.86 m}\n"
        "direction: one-way\n"
        "stretch: {edge: 4 %, panel: 12 %}\n"
        "allowances: {wrap: 12 mm, bleed: 10 mm, handling: {want: 40 mm, least: 15 mm}, overlap: "
        "10 mm, gap: 4 mm, flush: 2 mm}\n"
        "sold: [{by: 1 m, price: 14.20}, {by: 22.86 m, price: 289.00}]\n"
        "currency: EUR\n");
    CHECK(film.name == "Satin hybrid");
    CHECK(film.demonstration);
    CHECK(film.kind == FilmKind::hybrid);
    CHECK(film.holds_metal == HoldsMetal::no);
    CHECK(film.width == 1'524'000);
    CHECK(film.trim == 6'000);
    CHECK(film.roll_length == Um{22'860'000});
    CHECK(film.direction == Direction::one_way);
    CHECK(film.stretch_edge_percent == 4.0);
    CHECK(film.stretch_panel_percent == 12.0);
    CHECK(film.allowances.wrap == Um{12'000});
    CHECK(film.allowances.bleed == 10'000);
    CHECK(film.allowances.handling.want == 40'000);
    CHECK(film.allowances.handling.least == 15'000);
    CHECK(film.allowances.overlap == 10'000);
    CHECK(film.allowances.gap == 4'000);
    CHECK(film.allowances.flush == 2'000);
    CHECK(film.allowances.ruler == 1'000);
    REQUIRE(film.sold.size() == 2);
    CHECK(film.sold[0].by == Length::from_mm(1'000));
    CHECK(film.sold[1].price == Money::from_micros(289'000'000));
    CHECK(film.currency == "EUR");
    CHECK(film.money_digits == 2);
}

TEST_CASE("the shortest film file, and what it leaves open") {
    const Film film = film_of("film: F\nroll: {width: 1524 mm}\n");
    CHECK(!film.kind.has_value());
    CHECK(film.holds_metal == HoldsMetal::unknown);
    CHECK(film.trim == 0);
    CHECK(!film.roll_length.has_value());
    CHECK(film.direction == Direction::one_way);
    CHECK(!film.stretch_edge_percent.has_value());
    CHECK(!film.allowances.wrap.has_value());
    CHECK(film.allowances.handling.want == 0);
    CHECK(film.sold.empty());
}

TEST_CASE("single figures stand for two") {
    const Film film =
        film_of("film: F\nroll: {width: 1524}\nstretch: 8 %\nallowances: {handling: 40}\n");
    CHECK(film.stretch_edge_percent == 8.0);
    CHECK(film.stretch_panel_percent == 8.0);
    CHECK(film.allowances.handling.want == 40'000);
    CHECK(film.allowances.handling.least == 15'000);
    CHECK(film_of("film: F\nroll: {width: 1524}\nallowances: {handling: 8}\n")
              .allowances.handling.least == 8'000);
}

TEST_CASE("the ruler follows the unit of the roll's width") {
    CHECK(film_of("film: F\nroll: {width: 60 in}\n").allowances.ruler == 3'175);
    CHECK(film_of("film: F\nroll: {width: 5 ft}\nunits: mm\n").allowances.ruler == 3'175);
    CHECK(film_of("film: F\nunits: in\nroll: {width: 60}\n").allowances.ruler == 3'175);
    CHECK(film_of("film: F\nunits: in\nroll: {width: 1524 mm}\n").allowances.ruler == 1'000);
    CHECK(film_of("film: F\nroll: {width: 60 in}\nallowances: {ruler: 1 mm}\n").allowances.ruler ==
          1'000);
    CHECK(film_of("film: F\nroll: {width: 60 in}\nallowances: {wrap: 1/2 in}\n").allowances.ruler ==
          3'175);
    CHECK(faults_of_film("film: F\nroll: {width: 60 in}\nallowances: {ruler: 1/16 in}\n") ==
          "t.yaml:3:21: ruler '1/16 in' is not a whole number of micrometers, on which pieces are "
          "placed; write 1/8 in, or whole millimeters\n");
}

TEST_CASE("a roll never has more film than there is") {
    const Film film =
        film_of("film: F\nroll: {width: 1524.0009, trim: 0.0001, length: 25.0000009 m}\n");
    CHECK(film.width == 1'524'000);
    CHECK(film.trim == 1);
    CHECK(film.roll_length == Um{25'000'000});
}

TEST_CASE("prices print in the decimals of their currency, or as they were written") {
    const std::string roll = "film: F\nroll: {width: 1524}\n";
    CHECK(film_of(roll + "sold: [{by: 1 m, price: 1420}]\ncurrency: JPY\n").money_digits == 0);
    CHECK(film_of(roll + "sold: [{by: 1 m, price: 14}]\ncurrency: KWD\n").money_digits == 3);
    CHECK(film_of(roll + "sold: [{by: 1 m, price: 14.20}, {by: 2 m, price: 28}]\n").money_digits ==
          2);
    CHECK(film_of(roll + "sold: [{by: 1 m, price: 14}]\n").money_digits == 0);
}

TEST_CASE("what is wrong with a film file") {
    const std::string head = "film: F\nroll: {width: 1524}\n";
    CHECK(faults_of_film("film: F\n") ==
          "t.yaml:1:1: the file has no 'roll'; add 'roll: {width: ..., trim: ..., length: ...}'\n");
    CHECK(faults_of_film("film: F\nroll: {trim: 6}\n") ==
          "t.yaml:2:1: 'roll' has no 'width'; add 'width: LENGTH'\n");
    CHECK(faults_of_film("film: F\nroll: 1524 mm\n") ==
          "t.yaml:2:7: 'roll' is '1524 mm', not a map with keys; write it like {width: ..., trim: "
          "..., length: ...}\n");
    CHECK(faults_of_film("film: F\nroll: {width: 40 mm}\n") ==
          "t.yaml:2:15: width '40 mm' is less than 50 mm; give 50 mm to 6 m\n");
    CHECK(faults_of_film("film: F\nroll: {width: 100 mm, trim: 50 mm}\n") ==
          "t.yaml:2:29: trim on both edges leaves nothing of the roll's width; give what is not "
          "used along one edge\n");
    CHECK(faults_of_film(head + "trim: 6\n") ==
          "t.yaml:3:1: 'trim' is not a key of a film file; 'trim' belongs under 'roll'\n");
    CHECK(faults_of_film(head + "kind: casst\n") ==
          "t.yaml:3:7: kind 'casst' is not known; did you mean 'cast'?\n");
    CHECK(faults_of_film(head + "kind: foil\n") ==
          "t.yaml:3:7: kind 'foil' is not known; it is one of 'cast', 'hybrid', 'calendered' or "
          "'polyurethane'\n");
    CHECK(faults_of_film(head + "stretch: {edge: 4}\n") ==
          "t.yaml:3:17: edge '4' is not a percentage: its sign is missing; write 4 %\n");
    CHECK(faults_of_film(head + "stretch: 401 %\n") ==
          "t.yaml:3:10: stretch '401 %' is more than 400 %; give 0 % to 400 %\n");
    CHECK(faults_of_film(head + "stretch: [4 %, 12 %]\n") ==
          "t.yaml:3:10: stretch is a list; one plain value belongs here\n");
    CHECK(faults_of_film(head + "allowances: {handling: {want: 10, least: 20}}\n") ==
          "t.yaml:3:35: 'least' is more than 'want'; give the smaller margin as 'least'\n");
    CHECK(faults_of_film(head + "allowances: {handling: {least: 20}}\n") ==
          "t.yaml:3:14: 'handling' has no 'want'; add 'want: LENGTH'\n");
    CHECK(faults_of_film(head + "currency: Euro\n") ==
          "t.yaml:3:11: currency 'Euro' is not a code of ISO 4217; write three capitals, such as "
          "EUR\n");
    CHECK(faults_of_film(head + "sold: {by: 1 m, price: 14.20}\n") ==
          "t.yaml:3:7: 'sold' is not a list; write it like [{by: ..., price: ..., from: ...}, ...]\n");
    CHECK(faults_of_film(head + "sold: [{by: 1 m}]\n") ==
          "t.yaml:3:8: an entry of 'sold' has no 'price'; add 'price: PRICE'\n");
    CHECK(faults_of_film(head + "sold: [{by: 1 m, price: -3}]\n") ==
          "t.yaml:3:25: price '-3' is less than 0; give 0 to 1000000\n");
    CHECK(faults_of_film(
              "film: F\nroll: {width: 1524, length: 10 m}\nsold: [{by: 25 m, price: 1}]\n") ==
          "t.yaml:3:13: by '25 m' is longer than the roll; an order is one uncut length; give a "
          "longer 'length' under 'roll', or a shorter one here\n");
}

TEST_CASE("another kind of file is told by name") {
    CHECK(faults_of_vehicle("film: F\nroll: {width: 1524}\n") ==
          "t.yaml:1:1: this is a film file, where a vehicle file belongs; give the vehicle first "
          "and the film last\n");
    CHECK(faults_of_film("# V\nvehicle: V\n") ==
          "t.yaml:2:1: this is a vehicle file, where a film file belongs; give a film file after "
          "the vehicles\n");
    CHECK(faults_of_vehicle("stock: []\n") ==
          "t.yaml:1:1: this is a stock file, where a vehicle file belongs; give a vehicle file\n");
    CHECK(faults_of_vehicle("") ==
          "t.yaml:1:1: the file is empty; begin it with 'vehicle: NAME'\n");
    CHECK(faults_of_vehicle("- a\n") ==
          "t.yaml:1:1: the file is a list; begin it with 'vehicle: NAME'\n");
    CHECK(faults_of_film("film:Gloss\n") ==
          "t.yaml:1:1: after the colon of 'film:Gloss' a blank is missing; put one between the key "
          "and its value\n");
    CHECK(faults_of_film("Gloss\n") ==
          "t.yaml:1:1: the file is not a film file; begin it with 'film: NAME'\n");
}

} // namespace
} // namespace pelt::read_test
