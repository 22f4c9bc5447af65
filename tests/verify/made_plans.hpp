// SPDX-License-Identifier: MIT
// Right plans made by the program itself of a vehicle that has something of everything, for the
// tests of the check.
#pragma once

#include "verify/right_plans.hpp"

#include <memory>
#include <string>
#include <vector>

namespace pelt::test {

/// Throws when the texts or the job cannot be used.
RightPlan made_plan(const std::string& vehicle, const std::string& film, CutBy by,
                    const std::vector<std::string>& leave);

/// Stops, tucks, every kind of opening, a recess, panels on both sides and faces, seams drawn and
/// added, parts left on, a panel that may lie freely and comes from any batch.
RightPlan plan_of_everything(CutBy by);

/// The pieces of a panel's side and copy, by part; inlays are asked for by their name.
struct Which {
    std::string panel;
    Side side = Side::centre;
    int part = 1;
    std::string inlay = {};
    int copy = 1;
};
Piece& piece_of(RightPlan& plan, const Which& which);
Panel& panel_of(RightPlan& plan, const std::string& name);
DevelopedPanel& developed_of(RightPlan& plan, const std::string& name);
/// Where the piece lies (the copy asked for).
Placement& placement_of(RightPlan& plan, const Which& which);

} // namespace pelt::test
