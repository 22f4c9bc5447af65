// SPDX-License-Identifier: MIT
// Options that a job has no use for. Inside order/ only.
#pragma once

#include "order/order.hpp"

namespace pelt::order {

/// A warning for each option that changes nothing: how film is cut or how it may lie rules it out.
/// `film` is the request's, as this job uses it.
void warn_of_idle_options(const Request& request, const Film& film, Faults& faults);

} // namespace pelt::order
