// SPDX-License-Identifier: MIT
// Which parts of the hardware a job calls for. Inside order/ only.
#pragma once

#include "model/plan.hpp"

#include <string>
#include <vector>

namespace pelt::order {

/// Whether a panel's film goes behind a part or over its place: by `behind`, or by name: the panel
/// "mirror cap" of the group "mirrors" belongs to the mirrors, "door handle" to the door handles.
bool tied_to(const Panel& panel, const std::string& part);

/// The wrapped sides of a panel; `left_out` is sorted.
int sides_in(const Vehicle& vehicle, int vehicle_index, int panel_index,
             const std::vector<LeftOut>& left_out);

/// In the file's order. A part is called for by a wrapped panel that is tied to it, and by a part
/// that comes off after it. A part that is tied to nothing comes off for every job: nobody can tell
/// where it is. What stays on (`left_on`) is in neither list.
struct PartsOff {
    std::vector<std::string> off;
    std::vector<std::string> not_needed;
};
PartsOff parts_off(const Vehicle& vehicle, int vehicle_index, const std::vector<LeftOut>& left_out,
                   const std::vector<std::string>& left_on);

/// Parts of `names` so that each comes after what it waits for, else in the file's order. The
/// reader has refused circles.
std::vector<const Hardware*> in_order_of_taking_off(const Vehicle& vehicle,
                                                    const std::vector<std::string>& names);

/// What comes off over all vehicles, each name once.
std::vector<std::string> coming_off(const std::vector<Vehicle>& vehicles,
                                    const std::vector<LeftOut>& left_out,
                                    const std::vector<std::string>& left_on);

} // namespace pelt::order
