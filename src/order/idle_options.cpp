// SPDX-License-Identifier: MIT
#include "order/idle_options.hpp"

#include <algorithm>

namespace pelt::order {
namespace {

bool any_may_lie_askew(const Request& request, const Film& film) {
    return std::any_of(request.vehicles.begin(), request.vehicles.end(), [&](const Vehicle& v) {
        return std::any_of(v.panels.begin(), v.panels.end(), [&](const Panel& panel) {
            return panel.direction.value_or(film.direction) == Direction::any;
        });
    });
}

void warn(Faults& faults, const std::string& what, const std::string& remedy) {
    faults.push_back({Severity::warning, {}, "", what, remedy});
}

} // namespace

void warn_of_idle_options(const Request& request, const Film& film, Faults& faults) {
    if (request.free_turns && request.by == CutBy::straight)
        warn(faults, "straight cuts take no pieces askew, so --turns any changes nothing",
             "cut along outlines (--by contour), or leave it out");
    else if (request.free_turns && !any_may_lie_askew(request, film))
        warn(faults, "this film has a direction, so --turns any changes nothing",
             "leave it out; only film whose file says 'direction: any' may lie askew");
    if (request.margin && request.by == CutBy::contour)
        warn(faults, "along outlines pieces have no margin to grip, so --margin changes nothing",
             "cut straight (--by straight), or leave it out");
    if (request.in_order && request.by == CutBy::contour)
        warn(faults,
             "along outlines the film is not cut off in strips, so --in-order changes nothing",
             "cut straight (--by straight), or leave it out");
}

} // namespace pelt::order
