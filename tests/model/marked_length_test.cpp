// SPDX-License-Identifier: MIT
#include "model/fault.hpp"
#include "model/marked_length.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <string>

using namespace pelt;

namespace {

std::string told(Um length, Told how, Unit unit) {
    return in_unit("it is " + marked(length, how) + " long", unit);
}

} // namespace

TEST_CASE("a length in a sentence is told in every unit, rounded as it was meant") {
    CHECK(told(1'480'000, Told::up, Unit::mm) == "it is 1480 mm long");
    CHECK(told(1'480'001, Told::up, Unit::mm) == "it is 1481 mm long");
    CHECK(told(1'480'999, Told::down, Unit::mm) == "it is 1480 mm long");
    CHECK(told(1'480'500, Told::nearest, Unit::mm) == "it is 1481 mm long");
    CHECK(told(1'480'000, Told::up, Unit::cm) == "it is 148.0 cm long");
    CHECK(told(5'000, Told::up, Unit::m) == "it is 0.005 m long");
    CHECK(told(40, Told::nearest, Unit::mm) == "it is 0 mm long");
    CHECK(told(140, Told::finely, Unit::mm) == "it is 0.1 mm long");
    CHECK(told(140, Told::finely, Unit::in) == "it is 0.01 in long");
    // Eighths: 58 3/8 in is 1482.725 mm.
    CHECK(told(1'482'725, Told::up, Unit::in) == "it is 58 3/8 in long");
    CHECK(told(1'482'726, Told::up, Unit::ft) == "it is 58 1/2 in long");
    CHECK(told(1'482'726, Told::down, Unit::yd) == "it is 58 3/8 in long");
    CHECK(told(2'000, Told::down, Unit::in) == "it is 0.07 in long");
    CHECK(told(2'000, Told::nearest, Unit::in) == "it is 1/8 in long");
    CHECK(told(-3'175, Told::nearest, Unit::in) == "it is -1/8 in long");
    CHECK(told(-1'500, Told::down, Unit::mm) == "it is -2 mm long");
    CHECK(in_unit("nothing in it", Unit::in) == "nothing in it");
    CHECK(in_unit("cut short " + marked(1, Told::up).substr(0, 2), Unit::in) == "cut short ");
}

TEST_CASE("a fault is told in the unit: what panels have in common is told once") {
    const auto source = std::make_shared<const Source>(Source{"t.yaml", "a: 1\nb: 2\n"});
    const std::string common = "too tight";
    const auto fault = [&](int line, const std::string& panel, Um length) {
        return Fault{Severity::warning,
                     {source, line, 1},
                     panel,
                     common + ": edge 1-2 (" + marked(length, Told::down) + ")",
                     "cut it in",
                     common};
    };
    CHECK(to_string(fault(1, "hood", 25'400), false, Unit::in) ==
          "t.yaml:1:1: panel 'hood': too tight: edge 1-2 (1 in); cut it in");
    Fault other = fault(2, "roof", 9'000);
    other.common.clear();
    const Faults told = told_together(
        {fault(1, "hood", 25'400), other, fault(2, "door", 12'000), fault(1, "hood", 25'400)});
    REQUIRE(told.size() == 2);
    CHECK(to_string(told[0], true) ==
          "t.yaml: too tight: hood edge 1-2 (25 mm); door edge 1-2 (12 mm); cut it in");
    // Alone it keeps its place and its panel.
    const Faults alone = told_together({fault(1, "hood", 25'400), fault(1, "hood", 25'400)});
    REQUIRE(alone.size() == 1);
    CHECK(to_string(alone[0], false) ==
          "t.yaml:1:1: panel 'hood': too tight: edge 1-2 (25 mm); cut it in");
    CHECK(told[1].panel == "roof");
    CHECK(sentence_of(told[1]) == "too tight: edge 1-2 (9 mm); cut it in");
}
