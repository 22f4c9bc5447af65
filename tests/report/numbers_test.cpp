// SPDX-License-Identifier: MIT
#include "report/numbers.hpp"

#include <doctest/doctest.h>

using namespace pelt;
using namespace pelt::report;

TEST_CASE("sizes are rounded up to whole millimeters, never down") {
    const Measures mm(Unit::mm);
    CHECK(mm.size(1'480'000) == "1480");
    CHECK(mm.size(1'480'001) == "1481");
    CHECK(mm.size(1) == "1");
    CHECK(mm.size(0) == "0");
    CHECK(mm.size(-1) == "0");
    CHECK(mm.size(24'999, Rounding::down) == "24");
    CHECK(Measures(Unit::cm).size(1'480'001) == "148.1");
    CHECK(Measures(Unit::m).size(1'480'001) == "1.481");
}

TEST_CASE("inches go up to the next eighth and the fraction is in lowest terms") {
    const Measures in(Unit::in);
    CHECK(in.size(25'400) == "1");
    CHECK(in.size(25'401) == "1 1/8");
    CHECK(in.size(3'175) == "1/8");
    CHECK(in.size(6'350) == "1/4");
    CHECK(in.size(25'400 + 4 * 3'175) == "1 1/2");
    CHECK(in.size(1'524'000) == "60");
    CHECK(in.size_with_unit(1'524'000) == "60 in");
    CHECK(Measures(Unit::yd).size(914'400) == "36");
}

TEST_CASE("lengths of film") {
    const Measures mm(Unit::mm);
    CHECK(mm.film(Um{15'000'000}) == "15 m");
    CHECK(mm.film(Um{14'210'400}) == "14.211 m");
    CHECK(mm.film(Um{14'210'400}, Rounding::down) == "14.21 m");
    CHECK(mm.film(Length::from_pm(1)) == "0.001 m");
    // 25 yd is 22.86 m exactly (24 FR 5348).
    CHECK(Measures(Unit::yd).film(25 * length_of(Unit::yd)) == "25 yd");
    CHECK(Measures(Unit::yd).film(25 * length_of(Unit::yd) + Length::from_pm(1)) == "25.01 yd");
    CHECK(Measures(Unit::ft).film(Um{304'800}) == "1 ft");
    CHECK(Measures(Unit::in).film(Um{25'401}) == "1 1/8 in");
    CHECK(Measures(Unit::in).film(Length::from_pm(1)) == "1/8 in");
}

TEST_CASE("areas go to the nearest hundredth, a half away from zero") {
    const Measures mm(Unit::mm);
    const DoubleArea m2 = DoubleArea{2} * 1'000'000 * 1'000'000;
    CHECK(mm.area(m2) == "1.00 m²");
    CHECK(mm.area(m2 / 200) == "0.01 m²"); // half a hundredth
    CHECK(mm.area(m2 / 200 - 1) == "0.00 m²");
    CHECK(mm.area(m2 * 5 / 200) == "0.03 m²");
    CHECK(mm.area_number(DoubleArea{2} * 2'225'040'000'000) == "2.225");
}

// 54 in × 75 ft = 31.354776 m² and 60 in × 25 yd = 34.83864 m² are exact products of the
// definitions; NIST SP 811 (2008) App. B.8: 1 ft² = 0.09290304 m².
TEST_CASE("square feet") {
    const Measures ft(Unit::ft);
    const Um inch = 25'400;
    CHECK(ft.area(DoubleArea{2} * (54 * inch) * (75 * 12 * inch)) == "337.50 sq ft");
    CHECK(ft.area(DoubleArea{2} * (60 * inch) * (25 * 36 * inch)) == "375.00 sq ft");
    CHECK(Measures(Unit::m).area(DoubleArea{2} * (54 * inch) * (75 * 12 * inch)) == "31.35 m²");
}

TEST_CASE("percentages go to the nearest tenth in whole numbers") {
    CHECK(percent(Int128{1}, Int128{3}) == "33.3 %");
    CHECK(percent(Int128{2}, Int128{3}) == "66.7 %");
    CHECK(percent(Int128{25}, Int128{10'000}) == "0.3 %"); // 0.25: printf would say 0.2
    CHECK(percent(Int128{35}, Int128{10'000}) == "0.4 %");
    CHECK(percent(Int128{7}, Int128{7}) == "100.0 %");
    CHECK(percent(9.0) == "9 %");
    CHECK(percent(9.46) == "9.5 %");
}

TEST_CASE("money is printed as it is") {
    CHECK(money(Money::from_micros(14'200'000), 2, "EUR") == "14.20 EUR");
    CHECK(money(Money::from_micros(14'205'000), 2, "EUR") == "14.205 EUR");
    CHECK(money(Money::from_micros(21'300'000'000), 0, "JPY") == "21300 JPY");
}

TEST_CASE("an unknown stretch is never a number, an estimate says that it is one") {
    CHECK(stretch_text({StretchAsked::Is::unknown, 0}) == "not checked");
    CHECK(stretch_text({StretchAsked::Is::estimate, 9}) == "about 9 %");
    CHECK(stretch_text({StretchAsked::Is::exact, 0}) == "0 %");
}
