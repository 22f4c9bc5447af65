// SPDX-License-Identifier: MIT
// Which panels a job is about. Inside order/ only.
#pragma once

#include "model/plan.hpp"
#include "order/order.hpp"

#include <vector>

namespace pelt::order {

/// The panels' sides of which nothing is cut, sorted. A word that selects nothing, or a selection
/// that leaves nothing, is a fault of severity usage; a word that is a panel's and a group's name
/// is warned of.
std::vector<LeftOut> left_out_by(const Selection& selection, const std::vector<Vehicle>& vehicles,
                                 Faults& faults);

/// True when no side of the panel is cut. `left_out`: sorted.
bool is_left_out(const std::vector<LeftOut>& left_out, int vehicle, int panel, Sides sides);

/// The same once it is known how panels are divided: takes what is not cut away from the job's
/// pieces, and gives the job all that is left out and what is half done.
void leave_out_pieces(const Selection& selection, Job& job, Faults& faults);

/// What is done already and what is cut again (both sorted), of all that the selection would cut
/// otherwise. `ids`: every piece of the sides that are not left out; of those that have none it is
/// told by the whole side.
HalfDone half_done_by(const Selection& selection, const std::vector<Vehicle>& vehicles,
                      const std::vector<PieceId>& ids = {});

/// The parts named by `--leave`, each checked against the vehicles' hardware (severity usage), and
/// what can only come off after them.
std::vector<std::string> left_on_by(const std::vector<std::string>& leave,
                                    const std::vector<Vehicle>& vehicles, Faults& faults);

} // namespace pelt::order
