// SPDX-License-Identifier: MIT
// The first steps from a request to a layout. Inside order/ only.
#pragma once

#include "order/order.hpp"
#include "order/ways.hpp"

namespace pelt::order {

/// The job without pieces and rolls: selection, what is on the vehicle already, parts off, panels
/// with their tolerances. Takes the request's vehicles.
Job job_from(Request& request, Faults& faults);

} // namespace pelt::order
