// SPDX-License-Identifier: MIT
// Film that its stops leave in several parts.
#include "cutting.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace pelt;
using namespace pelt::test;

namespace {

/// A square of 400 mm with a tab of so many by 30 mm on a neck 4 mm high. Stops of 3 mm leave
/// nothing of the neck.
Cutting square_with_tab(double wide) {
    const double far = 420 + wide;
    Panel drawn = panel(corners({{0, 0},
                                 {400, 0},
                                 {400, 198},
                                 {420, 198},
                                 {420, 185},
                                 {far, 185},
                                 {far, 215},
                                 {420, 215},
                                 {420, 202},
                                 {400, 202},
                                 {400, 400},
                                 {0, 400}}));
    drawn.edges = {stop("all", 3)};
    drawn.forward = Heading::right;
    return cut(drawn, film());
}

} // namespace

TEST_CASE("a bit beyond the stops is left out up to a thousandth of the panel, and told") {
    // (12.6 − 6) × 24 mm² of 160 000 + 80 + 12.6 × 30.
    const Cutting small = square_with_tab(12.6);
    CHECK(is_mm2(small.piece().wrapped, 394.0 * 394));
    REQUIRE(small.faults.size() == 1);
    CHECK(small.faults[0].severity == Severity::note);
    CHECK(small.faults[0].what == "a bit of 158 mm² beyond its stops is left out");

    // (12.8 − 6) × 24 of 160 464.
    const Cutting large = square_with_tab(12.8);
    CHECK(large.ways.empty());
    REQUIRE(large.faults.size() == 1);
    CHECK(large.faults[0].severity == Severity::file);
    CHECK(large.faults[0].what ==
          "its stops, openings and inlays leave it in 2 parts, the second of 163 mm²");
}
