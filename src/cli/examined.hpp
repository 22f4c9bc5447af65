// SPDX-License-Identifier: MIT
// What 'pelt check' works out of vehicles and films. Inside cli/ only.
#pragma once

#include "order/order.hpp"

#include <vector>

namespace pelt::cli {

struct Examined {
    order::AreaOutcome areas;       ///< with all its extras, and with no film
    std::vector<Faults> with_films; ///< of the vehicle with each film, in their order
};

/// Of each vehicle. All there is to do is shared out among threads.
std::vector<Examined> examined(const std::vector<Vehicle>& vehicles, const std::vector<Film>& films,
                               int threads);

} // namespace pelt::cli
