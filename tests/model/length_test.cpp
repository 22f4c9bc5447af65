// SPDX-License-Identifier: MIT
#include "model/length.hpp"

#include <doctest/doctest.h>

using namespace pelt;

// NIST SP 811 (2008) App. B.8 and 24 FR 5348 (1959): exact by definition.
TEST_CASE("units are exact by definition") {
    CHECK(length_of(Unit::in) == Length::from_um(25'400));
    CHECK(length_of(Unit::ft) == 12 * length_of(Unit::in));
    CHECK(length_of(Unit::yd) == 3 * length_of(Unit::ft));
    CHECK(25 * length_of(Unit::yd) == Length::from_mm(22'860));
}

TEST_CASE("a length rounds to the grid upwards or downwards, also below zero") {
    CHECK(Length::from_pm(1).ceil_um() == 1);
    CHECK(Length::from_pm(1).floor_um() == 0);
    CHECK(Length::from_pm(-1).ceil_um() == 0);
    CHECK(Length::from_pm(-1).floor_um() == -1);
    CHECK(Length::from_um(-7).floor_um() == -7);
}
