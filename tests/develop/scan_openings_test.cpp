// SPDX-License-Identifier: MIT
// Which hole of a scan an opening is, and what is said of holes that none names.
#include "develop/surface/scan_openings.hpp"
#include "model/marked_length.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace pelt::develop {
namespace {

/// A plate with square holes of these sides, by their rims alone.
Surface plate(const std::vector<double>& holes) {
    Surface out;
    const auto add_square = [&](double low, double side) {
        const int first = static_cast<int>(out.points.size());
        for (const Point3 p : {Point3{low, low, 0}, Point3{low, low + side, 0},
                               Point3{low + side, low + side, 0}, Point3{low + side, low, 0}})
            out.points.push_back(p);
        out.loops.push_back({first, first + 1, first + 2, first + 3});
    };
    add_square(-10, 1'000);
    double low = 0;
    for (const double side : holes) {
        add_square(low, side);
        low += side + 10;
    }
    return out;
}

/// What is said when holes with these numbers are named.
Faults told(const Surface& scan, const std::vector<int>& named) {
    Panel panel;
    for (const int hole : named) {
        Opening opening;
        opening.name = "o" + std::to_string(hole);
        opening.hole = hole;
        panel.openings.push_back(opening);
    }
    Faults faults;
    loops_of_openings(panel, scan, faults);
    return faults;
}

TEST_CASE("holes of a scan that no opening names are covered: told, and warned of where large") {
    // A rim of 60 mm is still a small hole (common practice, no source).
    const Faults small = told(plate({15, 10}), {});
    REQUIRE(small.size() == 1);
    CHECK(small[0].severity == Severity::note);
    CHECK(in_unit(small[0].what, Unit::mm) ==
          "its scan has 2 holes that are covered, the longest rim 60 mm");

    const Faults large = told(plate({15.01, 10}), {2});
    REQUIRE(large.size() == 1);
    CHECK(large[0].severity == Severity::warning);
    CHECK(in_unit(large[0].what, Unit::mm) ==
          "its scan has 1 hole that is covered, the longest rim 60 mm");

    CHECK(told(plate({15.01, 10}), {1})[0].severity == Severity::note);
    CHECK(told(plate({15, 10}), {2, 1}).empty());
    CHECK(told(plate({}), {}).empty());
}

} // namespace
} // namespace pelt::develop
