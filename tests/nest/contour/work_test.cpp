// SPDX-License-Identifier: MIT
// How much work an effort stands for, counted in look-ups.
#include "nest/contour/search.hpp"
#include "nest/contour/tuning.hpp"

#include <doctest/doctest.h>

namespace pelt::nest::contour {
namespace {

std::uint64_t of_a_unit(std::size_t items, std::size_t options) {
    return work_between_joins(items, options) * tuning::joins_a_unit;
}

TEST_CASE("a few items get work by their number, whole vehicles all of a unit") {
    CHECK(of_a_unit(38, 34) == tuning::work_a_unit);
    CHECK(of_a_unit(19, 19) == tuning::work_a_unit); // the motorcycle, the least shipped vehicle
    CHECK(of_a_unit(7, 7) * 2 < tuning::work_a_unit);
    CHECK(of_a_unit(1, 4) < of_a_unit(2, 8));
    CHECK(of_a_unit(500, 400) * 2 == tuning::work_a_unit);
}

TEST_CASE("an effort may be a part of a unit, and at least one epoch") {
    Effort effort;
    CHECK(epochs_of(effort) == tuning::joins_a_unit);
    effort.part = 4;
    CHECK(epochs_of(effort) * 4 == tuning::joins_a_unit);
    effort.part = 1000;
    CHECK(epochs_of(effort) == 1);
}

} // namespace
} // namespace pelt::nest::contour
