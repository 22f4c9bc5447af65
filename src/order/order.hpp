// SPDX-License-Identifier: MIT
// The driver: from files that were read to what to buy and how to cut it.
#pragma once

#include "model/order.hpp"
#include "model/plan.hpp"
#include "nest/nest.hpp"

#include <optional>
#include <vector>

namespace pelt::order {

/// One run of `pelt cut`.
struct Request {
    std::vector<Vehicle> vehicles;
    Film film;
    CutBy by = CutBy::straight;
    int times = 1;
    nest::Effort effort;
    nest::Watch watch; ///< may be empty
};

/// What came of it. Without a plan `faults` says why.
struct Outcome {
    std::optional<Plan> plan;
    Order order;
    Faults faults; ///< warnings too
};

Outcome run(Request request);

/// For every new roll of the plan the cheapest single purchase that holds its length uncut.
Order buy(const Plan& plan);

} // namespace pelt::order
