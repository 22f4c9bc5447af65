// SPDX-License-Identifier: MIT
// Which parts of the hardware a job calls for, and how many of each. Inside order/ only.
#pragma once

#include "model/plan.hpp"

#include <string>
#include <vector>

namespace pelt::order {

/// Whether a panel's film goes behind a part or over its place on that side: by `behind`, by the
/// part's `with`, or by name: the panel "mirror cap" of the group "mirrors" belongs to the mirrors,
/// "door handle" to the door handles.
bool tied_to(const Panel& panel, Side side, const Hardware& part);

/// Whether any of the parts so called is tied to the panel, on any side.
bool tied_to_any(const Vehicle& vehicle, const Panel& panel, const std::vector<std::string>& parts);

/// The wrapped sides of a panel; `left_out` is sorted.
int sides_in(const Vehicle& vehicle, int vehicle_index, int panel_index,
             const std::vector<LeftOut>& left_out);

/// So many of a part.
struct PartNeeded {
    const Hardware* part;
    int count = 0;
};

/// In the file's order. A part is called for by a wrapped panel that is tied to it, and by a part
/// that comes off after it; of several alike (four handles) only those of the panels that are
/// wrapped, where the file's count divides among its panels, else all of them. A part that is tied
/// to nothing belongs to the vehicle as a whole: it comes off where nothing but extras is left out.
/// What stays on (`left_on`) is in neither list. The parts live as long as the vehicle.
struct PartsOff {
    std::vector<PartNeeded> off;
    std::vector<std::string> not_needed;
};
PartsOff parts_off(const Vehicle& vehicle, int vehicle_index, const std::vector<LeftOut>& left_out,
                   const std::vector<std::string>& left_on);

/// So that each comes after what it waits for, else in the file's order. The reader has refused
/// circles.
std::vector<PartNeeded> in_order_of_taking_off(const std::vector<PartNeeded>& parts);

/// What comes off over all vehicles, each name once.
std::vector<std::string> coming_off(const std::vector<Vehicle>& vehicles,
                                    const std::vector<LeftOut>& left_out,
                                    const std::vector<std::string>& left_on);

} // namespace pelt::order
