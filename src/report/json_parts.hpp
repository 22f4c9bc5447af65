// SPDX-License-Identifier: MIT
// Members that several kinds of JSON have.
#pragma once

#include "model/estimate.hpp"
#include "model/order.hpp"
#include "model/plan.hpp"
#include "report/json_text.hpp"
#include "report/marks.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// What to buy: "order" of pelt.cut/1.
Json json_order(const Job& job, const Order& order);

/// "warnings" of pelt.cut/1: what needs a decision, once for all panels that have it in common.
Json json_marks(const std::vector<Mark>& marks);

/// "notes" of pelt.cut/1.
Json json_notes(const std::vector<std::string>& notes);

/// "guess" of pelt.cut/1: what is known of a vehicle that was not measured.
Json json_guess(const Estimate& estimate);

} // namespace pelt::report
