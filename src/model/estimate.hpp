// SPDX-License-Identifier: MIT
// How much film a vehicle takes that was not measured, but is like another one. It is no plan and
// becomes none: it has no layout, no cuts, nothing to cut by.
#pragma once

#include "model/order.hpp"
#include "model/plan.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace pelt {

/// Of the lengths of vehicles drawn by what is assumed of the guessed sizes. None: some panel of it
/// goes on no roll, which is longer than any.
struct LengthRange {
    std::optional<Um> low;    ///< 5 of 100 take no more
    std::optional<Um> middle; ///< half of them
    std::optional<Um> high;   ///< 95 of 100
};

/// How much of what makes those lengths differ is the sizes of one panel.
struct PanelShare {
    int vehicle = 0; ///< index into the job's vehicles
    int panel = 0;   ///< index into that vehicle's panels
    double percent = 0;
    int rank = 1; ///< one more than panels that clearly matter more; equal for those that may not
};

/// A panel, by its indices.
struct PanelOf {
    int vehicle = 0;
    int panel = 0;
    friend auto operator<=>(const PanelOf&, const PanelOf&) = default;
};

struct Estimate {
    /// The pieces as scaled, laid nowhere: what hours, parts and areas are reckoned by.
    std::shared_ptr<const Job> as_scaled;
    Um as_scaled_length = 0;
    std::vector<PanelOf> guessed; ///< that the job is about
    LengthRange length;
    double sure_percent = 0; ///< asked for, or usual
    /// The least that can be bought and suffices so often; no lines: too many drawn vehicles have a
    /// panel that no roll takes.
    Order order;
    std::optional<Um> sure_length = std::nullopt; ///< before it is rounded up to what is sold
    double enough_percent = 0;             ///< how often it does
    std::vector<PanelShare> measure_first; ///< the most first; may be empty
    std::vector<PanelOf> too_wide;         ///< that no roll takes in some draws
};

} // namespace pelt
