// SPDX-License-Identifier: MIT
// The day on which a job is ready: its work as tasks, laid over crew and calendar. Inside order/
// only.
#pragma once

#include "model/quote.hpp"
#include "model/shop.hpp"
#include "order/work.hpp"

#include <optional>

namespace pelt::order {

/// From when and with what.
struct Calendar {
    std::optional<Day> start;
    std::optional<Day> film_arrives; ///< nothing is laid before
    std::int64_t rest_minutes = 0;   ///< of the film
};

/// By the minutes at worst, the job alone with the whole crew. Panels are laid in any order that
/// ends early, that of laying first; those that need two people stand in one block, so that help
/// is booked once.
Days days_of(const JobWork& work, const Shop& shop, const Calendar& calendar);

} // namespace pelt::order
