// SPDX-License-Identifier: MIT
#include "read/quantities.hpp"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

namespace pelt {
namespace {

using read::parse_length;

Length length(const std::string& text, Unit bare = Unit::mm) {
    CAPTURE(text);
    const auto parsed = parse_length(text, bare);
    INFO(parsed.refusal.what);
    REQUIRE(parsed.value.has_value());
    return parsed.value->length;
}

std::string refused(const std::string& text, Unit bare = Unit::mm) {
    const auto parsed = parse_length(text, bare);
    CAPTURE(text);
    CHECK(!parsed.value.has_value());
    return parsed.refusal.what + "; " + parsed.refusal.remedy;
}

// NIST Special Publication 811 (2008), appendix B.8: the inch is 2.54 cm and the foot 0.3048 m,
// exactly. Federal Register, 1 July 1959 (24 FR 5348): the yard is 0.9144 m, exactly.
TEST_CASE("inch, foot and yard are exact") {
    CHECK(length("1 in") == length("2.54 cm"));
    CHECK(length("1 ft") == length("0.3048 m"));
    CHECK(length("1 yd") == length("0.9144 m"));
    CHECK(length("25 yd") == length("22.86 m"));
    CHECK(length("54 in") == Length::from_um(1'371'600));
    CHECK(length("75 ft") == Length::from_mm(22'860));
}

// NIST Special Publication 811 (2008), appendix B.8: the square foot is 9.290304E-02 m2, exactly;
// NIST Handbook 44 (2026), appendix C: the square yard is 0.83612736 m2.
TEST_CASE("squares of units are exact") {
    const auto square_um2 = [](const std::string& side) {
        const auto um = static_cast<Int128>(length(side).ceil_um());
        return static_cast<long long>(um * um);
    };
    CHECK(square_um2("1 in") == 645'160'000LL);
    CHECK(square_um2("1 ft") == 92'903'040'000LL);
    CHECK(square_um2("1 yd") == 836'127'360'000LL);
}

TEST_CASE("every form of a length") {
    const std::vector<std::pair<std::string, Length>> forms{
        {"25", Length::from_mm(25)},
        {"0", Length{}},
        {"25 mm", Length::from_mm(25)},
        {"25mm", Length::from_mm(25)},
        {" 25  mm ", Length::from_mm(25)},
        {"-690", Length::from_mm(-690)},
        {"+5 mm", Length::from_mm(5)},
        {"0.5 mm", Length::from_um(500)},
        {".5 mm", Length::from_um(500)},
        {"1.524 m", Length::from_mm(1'524)},
        {"2.5 ft", Length::from_mm(762)},
        {"23 1/2 in", Length::from_um(596'900)},
        {"23-1/2 in", Length::from_um(596'900)},
        {"-23 1/2 in", Length::from_um(-596'900)},
        {"3/8 in", Length::from_um(9'525)},
        {"1/128 in", Length::from_pm(198'437'500)},
        {"1/3 ft", Length::from_um(101'600)},
        {"5 ft 3 in", Length::from_um(1'600'200)},
        {"5 ft 3 1/2 in", Length::from_um(1'612'900)},
        {"5 ft 11 127/128 in", Length::from_pm(1'828'601'562'500)},
        {"5' 3\"", Length::from_um(1'600'200)},
        {"5'3\"", Length::from_um(1'600'200)},
        {"5' 3 1/2\"", Length::from_um(1'612'900)},
        {"-5' 3\"", Length::from_um(-1'600'200)},
        {"5'", Length::from_mm(1'524)},
        {"63\"", Length::from_um(1'600'200)},
        {"5\u2032 3\u2033", Length::from_um(1'600'200)},
        {"0.000000001 mm", Length::from_pm(1)},
        {"10 km", Length{}},
    };
    for (const auto& [text, want] : forms)
        if (text != "10 km") {
            const auto& told_text = text;
            CAPTURE(told_text);
            CHECK(length(text) == want);
        }
}

TEST_CASE("a number without a unit takes the file's") {
    CHECK(length("2 1/2", Unit::in) == Length::from_um(63'500));
    CHECK(length("2.5", Unit::m) == Length::from_mm(2'500));
    CHECK(length("2.5 mm", Unit::m) == Length::from_um(2'500));
    CHECK(parse_length("60", Unit::in).value->unit == Unit::in);
    CHECK(parse_length("1524 mm", Unit::in).value->unit == Unit::mm);
    CHECK(parse_length("5 ft 3 in", Unit::mm).value->unit == Unit::in);
}

TEST_CASE("decimal lengths are exact where binary ones are not") {
    CHECK(length("0.1 mm") + length("0.2 mm") == length("0.3 mm"));
    CHECK(10 * length("0.1 in") == length("1 in"));
    CHECK(length("1234567.891234567 mm").pm() == 1'234'567'891'234'567);
}

TEST_CASE("what is no length is refused with what to write") {
    const std::string examples = "; write it like 25, 25 mm, 2.5 ft, 23 1/2 in or 5 ft 3 in";
    const std::string units = "; the units are mm, cm, m, in, ft and yd";
    const std::vector<std::pair<std::string, std::string>> wrong{
        {"", "is empty; give a length"},
        {"abc", "'abc' is not a length" + examples},
        {"-", "'-' is not a length" + examples},
        {"nan", "'nan' is not a length: it is not a finite number; write the number in digits"},
        {"-.inf", "'-.inf' is not a length: it is not a finite number; write the number in digits"},
        {"0x1F",
         "'0x1F' is not a length: only decimal digits are read; write it with digits 0 to 9"},
        {"010", "'010' is not a length: a number does not begin with 0; write 10"},
        {"00 mm", "'00 mm' is not a length: a number does not begin with 0; write 0"},
        {"00.5 mm", "'00.5 mm' is not a length: a number does not begin with 0; write 0.5"},
        {"1e3", "'1e3' is not a length: powers of ten are not read; write the number out in full"},
        {"1.5E-2 m",
         "'1.5E-2 m' is not a length: powers of ten are not read; write the number out in full"},
        {"12,5",
         "'12,5' is not a length: decimals stand after a point, and thousands have no mark; write "
         "12.5"},
        {"1,380 mm",
         "'1,380 mm' is not a length: decimals stand after a point, and thousands have no mark; "
         "write 1380 mm or 1.380 mm"},
        {"1,380,000",
         "'1,380,000' is not a length: decimals stand after a point, and thousands have no mark; "
         "write 1380000"},
        {"1'380", "'1'380' is not a length: thousands have no mark; write 1380"},
        {"1_380", "'1_380' is not a length: thousands have no mark; write 1380"},
        {"1 380",
         "'1 380' is not a length: it holds two numbers; write thousands without a blank, and "
         "fractions like 23 1/2 in"},
        {"5.", "'5.' is not a length: digits are missing after the point; write 5"},
        {"12 mmm", "'12 mmm' is not a length: 'mmm' is not a unit" + units},
        {"12 km", "'12 km' is not a length: 'km' is not a unit" + units},
        {"12 MM", "'12 MM' is not a length: 'MM' is not a unit; write mm"},
        {"12 inches", "'12 inches' is not a length: 'inches' is not a unit; write in"},
        {"12 feet", "'12 feet' is not a length: 'feet' is not a unit; write ft"},
        {"12 meters", "'12 meters' is not a length: 'meters' is not a unit; write m"},
        {"12 %", "'12 %' is not a length: what follows the number is not a unit" + units},
        {"12 mm.", "'12 mm.' is not a length: what follows the number is not a unit" + units},
        {"1 m 20 cm",
         "'1 m 20 cm' is not a length: it holds two measures; give it in one unit, or in feet and "
         "inches"},
        {"5 ft 14 in",
         "'5 ft 14 in' is not a length: inches after feet stay below 12; write it like 5 ft 3 1/2 "
         "in"},
        {"5 ft 12 in",
         "'5 ft 12 in' is not a length: inches after feet stay below 12; write it like 5 ft 3 1/2 "
         "in"},
        {"5.5 ft 3 in",
         "'5.5 ft 3 in' is not a length: feet before inches are whole; write it like 5 ft 3 1/2 "
         "in"},
        {"5' 3",
         "'5' 3' is not a length: after feet come inches and nothing else; write it like 5 ft 3 "
         "1/2 in"},
        {"3 5/2 in",
         "'3 5/2 in' is not a length: the fraction after a whole number is less than one; write it "
         "like 23 1/2 in"},
        {"1/0 in", "'1/0 in' is not a length: it divides by 0; write it like 23 1/2 in"},
        {"1.5/2 in",
         "'1.5/2 in' is not a length: a fraction is made of whole numbers; write it like 23 1/2 "
         "in"},
        {"1/3 in",
         "'1/3 in' is not a length: it is finer than can be kept exactly; give fewer decimals, or "
         "a fraction in halves, quarters, eighths ... of an inch"},
        {"0.0000000001 mm",
         "'0.0000000001 mm' is not a length: it is finer than can be kept exactly; give fewer "
         "decimals, or a fraction in halves, quarters, eighths ... of an inch"},
        {"9999999999 m", "'9999999999 m' is not a length: it is longer than 1000 km" + examples},
        {"12345678901234567890",
         "'12345678901234567890' is not a length: it has too many digits; write 17 at most"},
        {"\u2212690",
         "'\u2212690' is not a length: its minus sign is not the one on the keyboard; write -"},
    };
    for (const auto& [text, sentence] : wrong)
        CHECK(refused(text) == sentence);
}

} // namespace
} // namespace pelt
