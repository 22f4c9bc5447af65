// SPDX-License-Identifier: MIT
// Why the film is as long as it is, for `-v`. Inside cli/ only.
#pragma once

#include "cli/context.hpp"
#include "cli/run_time.hpp"
#include "order/order.hpp"
#include "report/report.hpp"

namespace pelt::cli {

/// Tells which pieces bind the length, then plans the job again in every way that could make it
/// shorter and tells what that would save; every one is a layout that was checked. Ends early by
/// Ctrl-C, or with a note that the time was up.
void tell_why(const order::Request& request, const order::Outcome& outcome,
              const report::Sheet& sheet, const RunTime& time, const Context& context);

} // namespace pelt::cli
