// SPDX-License-Identifier: MIT
// What may be missing: a part of its own of less than a thousandth of the panel, no more.
#include "verify/covering.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

namespace pelt::verify {
namespace {

/// A panel of a square meter with a square bit on a neck that is thinner than anything seen, and
/// film over the panel alone: the bit is so many mm².
Sentences missing(double bit_mm2) {
    const double side = std::sqrt(bit_mm2);
    Blank blank;
    blank.outline.points = {{0, 0},
                            {1'000, 0},
                            {1'000, 500},
                            {1'001, 500},
                            {1'001, 500 - side / 2},
                            {1'001 + side, 500 - side / 2},
                            {1'001 + side, 500 + side / 2},
                            {1'001, 500 + side / 2},
                            {1'001, 500.004},
                            {1'000, 500.004},
                            {1'000, 1'000},
                            {0, 1'000}};
    blank.outline.edge.assign(blank.outline.points.size(), 0);
    const Panel panel;
    const Job job;
    Asked asked;
    asked.edges.push_back({0, 0});
    Polygon film{{{0, 0}, {1'000'000, 0}, {1'000'000, 1'000'000}, {0, 1'000'000}}, {}};
    Rim rim(film);
    Covering covering{job, panel, blank, "panel", Heading::right, Wanted(panel, blank, asked),
                      {},  {},    {}};
    covering.parts.push_back({std::move(film), std::move(rim)});
    find_stretches(covering);
    Sentences out;
    check_cover(covering, out);
    return out;
}

TEST_CASE("a bit that lies apart may be missing up to a thousandth of the panel") {
    CHECK(missing(900) == Sentences{});
    const Sentences told = missing(1'300);
    REQUIRE(told.size() == 1);
    CHECK(told.front().starts_with("panel: no film at "));
}

} // namespace
} // namespace pelt::verify
