// SPDX-License-Identifier: MIT
// How wide the strips are into which a panel that is too wide is divided.
#include "cutting.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace pelt;
using namespace pelt::test;

TEST_CASE("no strip is narrower than 100 mm, which is hard to lay") {
    // Common practice, no source. Beside a strip of the whole 1512 mm only 48 would be left.
    Panel drawn = panel(size(1000, 1550));
    drawn.edges_none = true;
    drawn.forward = Heading::right;
    Film lapping = film(Direction::one_way);
    lapping.allowances.overlap = 10'000;
    piece::Wishes thrifty;
    thrifty.seams = Seams::thrifty;
    std::vector<double> narrowest;
    for (const piece::Way& way : cut(drawn, lapping, thrifty).ways) {
        REQUIRE(way.pieces.size() == 2);
        const BoxMm one = box_mm(way.pieces[0].wrapped);
        const BoxMm other = box_mm(way.pieces[1].wrapped);
        narrowest.push_back(std::min(one.y1 - one.y0, other.y1 - other.y0));
    }
    CHECK(narrowest == std::vector<double>{780, 100, 100});
}
