// SPDX-License-Identifier: MIT
// Which panels a job is about. Inside order/ only.
#pragma once

#include "model/plan.hpp"
#include "order/order.hpp"

#include <vector>

namespace pelt::order {

/// The panels' sides that are not cut, sorted. A word that selects nothing, or a selection that
/// leaves nothing, is a fault of severity usage.
std::vector<LeftOut> left_out_by(const Selection& selection, const std::vector<Vehicle>& vehicles,
                                 Faults& faults);

/// True when no side of the panel is cut. `left_out`: sorted.
bool is_left_out(const std::vector<LeftOut>& left_out, int vehicle, int panel, Sides sides);

/// Which sides are done already and which are cut again (both sorted), of all that the selection
/// would cut otherwise.
HalfDone half_done_by(const Selection& selection, const std::vector<Vehicle>& vehicles);

/// The parts named by `--leave`, each checked against the vehicles' hardware (severity usage), and
/// what can only come off after them.
std::vector<std::string> left_on_by(const std::vector<std::string>& leave,
                                    const std::vector<Vehicle>& vehicles, Faults& faults);

} // namespace pelt::order
