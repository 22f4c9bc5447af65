// SPDX-License-Identifier: MIT
// Every panel of a job developed. Inside order/ only.
#pragma once

#include "model/plan.hpp"

namespace pelt::order {

/// Fills job.developed for all vehicles. Panels do not depend on one another, and scans take
/// seconds: they run on up to `threads` threads (at least one). The result and the order of the
/// faults do not depend on how many.
void develop_all(Job& job, int threads, Faults& faults);

} // namespace pelt::order
