// SPDX-License-Identifier: MIT
// Jobs with panels that were not measured. Inside cli/ only.
#pragma once

#include "cli/context.hpp"
#include "cli/files.hpp"
#include "cli/formats.hpp"
#include "cli/run_time.hpp"
#include "cli/shop_asked.hpp"
#include "order/order.hpp"

#include <vector>

namespace pelt::cli {

struct Estimated {
    order::EstimateOutcome outcome;
    bool interrupted = false; ///< by Ctrl-C
};

/// Estimates one job, showing how far it is, until its end, the end of these seconds, or
/// Ctrl-C.
Estimated estimate(order::Request request, std::optional<double> seconds, const Context& context);

/// `pelt cut` of a job that can only be estimated: writes the estimate where a sheet was asked for.
/// There is no pattern of it. `filled`: its blanks. An exit status.
int cut_estimate(const order::Request& request, const std::optional<ShopAsked>& shop,
                 const std::vector<Target>& targets, const report::Fillings& filled, Files& files,
                 const RunTime& time, const Context& context);

} // namespace pelt::cli
