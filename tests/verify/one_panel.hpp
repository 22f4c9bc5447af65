// SPDX-License-Identifier: MIT
// Right plans of a vehicle with one panel, 'hood', in an ordinary film.
#pragma once

#include "verify/made_plans.hpp"
#include "verify/told.hpp"

#include <doctest/doctest.h>

#include <string>

namespace pelt::test {

inline const std::string film = "film: Test film\n"
                                "roll: {width: 1524 mm, trim: 6 mm, length: 30 m}\n"
                                "direction: one-way\n"
                                "allowances: {bleed: 10 mm, handling: {want: 40 mm, least: 15 mm}, "
                                "overlap: 12 mm, gap: 4 mm}\n";

inline RightPlan plan_of(const std::string& panel, CutBy by = CutBy::contour) {
    const RightPlan plan =
        made_plan("vehicle: V\npanels:\n  hood: {" + panel + "}\n", film, by, {});
    REQUIRE(faults_of(plan) == Told{});
    return plan;
}

inline Ring& cut_outline(RightPlan& plan, int part = 1) {
    return piece_of(plan, {"hood", Side::centre, part}).shapes.front().outline.outer;
}

inline const std::string flat = "size: [500, 400], forward: right, edges: none";

} // namespace pelt::test
