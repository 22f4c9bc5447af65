// SPDX-License-Identifier: MIT
// Members that several kinds of JSON have.
#pragma once

#include "model/estimate.hpp"
#include "model/order.hpp"
#include "model/plan.hpp"
#include "report/json_text.hpp"

namespace pelt::report {

/// What to buy: "order" of pelt.cut/1.
Json json_order(const Job& job, const Order& order);

/// "guess" of pelt.cut/1: what is known of a vehicle that was not measured.
Json json_guess(const Estimate& estimate);

} // namespace pelt::report
