// SPDX-License-Identifier: MIT
#include "read/currency.hpp"
#include "read/quantities.hpp"

#include <doctest/doctest.h>

#include <string>

namespace pelt {
namespace {

using namespace read;

template <class T>
std::string sentence(const Parsed<T>& parsed) {
    CHECK(!parsed.value.has_value());
    return parsed.refusal.what + "; " + parsed.refusal.remedy;
}

TEST_CASE("a percentage needs its sign") {
    CHECK(parse_percent("12 %").value == 12.0);
    CHECK(parse_percent("12.5%").value == 12.5);
    CHECK(parse_percent("0 %").value == 0.0);
    CHECK(sentence(parse_percent("12")) ==
          "'12' is not a percentage: its sign is missing; write 12 %");
    CHECK(sentence(parse_percent("%")) == "is empty; give a percentage");
    CHECK(sentence(parse_percent("ten %")) ==
          "'ten' is not a percentage; write digits only, such as 12 or 12.5");
    CHECK(sentence(parse_percent("0,5 %")) ==
          "'0,5' is not a percentage: decimals stand after a point, and thousands have no mark; "
          "write 0.5");
}

TEST_CASE("money is decimal, and keeps how it was written") {
    const auto price = parse_money("14.20");
    REQUIRE(price.value.has_value());
    CHECK(price.value->amount == Money::from_micros(14'200'000));
    CHECK(price.value->decimals == 2);
    CHECK(parse_money("0.1").value->amount + parse_money("0.2").value->amount ==
          parse_money("0.3").value->amount);
    CHECK(parse_money("289").value->decimals == 0);
    CHECK(parse_money("0.000001").value->amount == Money::from_micros(1));
    CHECK(sentence(parse_money("0.0000001")) ==
          "'0.0000001' is not an amount of money: it is finer or larger than can be kept exactly; "
          "write six decimals at most");
    CHECK(sentence(parse_money("14.20 EUR")) ==
          "'14.20 EUR' is not an amount of money; write the number alone, such as 14.20, and name "
          "the currency under 'currency'");
    CHECK(sentence(parse_money("1,300.00")) ==
          "'1,300.00' is not an amount of money: decimals stand after a point, and thousands have "
          "no mark; write 1300.00");
}

TEST_CASE("counts are whole") {
    CHECK(parse_count("4").value == 4);
    CHECK(parse_count("-4").value == -4);
    CHECK(sentence(parse_count("4.0")) ==
          "'4.0' is not a whole number: it has decimals; write digits only, such as 4");
    CHECK(sentence(parse_count("010")) ==
          "'010' is not a whole number: a number does not begin with 0; write 10");
    CHECK(sentence(parse_count("99999999999999999999999")) ==
          "'99999999999999999999999' is not a whole number: it has too many digits; write 17 at "
          "most");
}

TEST_CASE("yes and no are written so") {
    CHECK(parse_yes_no("yes").value == true);
    CHECK(parse_yes_no("no").value == false);
    for (const char* text : {"true", "Yes", "on", "1", ""}) {
        CAPTURE(text);
        CHECK(sentence(parse_yes_no(text)) ==
              "'" + std::string(text) + "' is neither yes nor no; write yes or no");
    }
}

TEST_CASE("long texts are cut where they are quoted") {
    CHECK(read::quoted(std::string(50, 'x')) == "'" + std::string(40, 'x') + "...'");
    CHECK(read::quoted("T\u00fcr") == "'T\u00fcr'");
}

// ISO 4217, minor units; from memory.
TEST_CASE("usual decimals of currencies") {
    CHECK(usual_decimals("EUR") == 2);
    CHECK(usual_decimals("USD") == 2);
    CHECK(usual_decimals("JPY") == 0);
    CHECK(usual_decimals("KWD") == 3);
    CHECK(!usual_decimals("eur"));
    CHECK(!usual_decimals("EURO"));
    CHECK(!usual_decimals(""));
}

} // namespace
} // namespace pelt
