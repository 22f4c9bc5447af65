// SPDX-License-Identifier: MIT
#include "order/parts_off.hpp"

#include <algorithm>

namespace pelt::order {
namespace {

using Names = std::vector<std::string>;

bool holds(const Names& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

/// A part and all that must come off before it.
void need(const Vehicle& vehicle, const std::string& name, Names& needed) {
    if (holds(needed, name))
        return;
    needed.push_back(name);
    for (const Hardware& part : vehicle.hardware)
        if (part.name == name)
            for (const std::string& first : part.after)
                need(vehicle, first, needed);
}

} // namespace

bool tied_to(const Panel& panel, const std::string& part) {
    const auto behind = [&](const auto& at) { return at.behind == part; };
    return panel.name == part || panel.name + "s" == part || panel.group == part ||
           std::any_of(panel.edges.begin(), panel.edges.end(), behind) ||
           std::any_of(panel.openings.begin(), panel.openings.end(), behind);
}

int sides_in(const Vehicle& vehicle, int v, int p, const std::vector<LeftOut>& left_out) {
    int sides = 0;
    for (const Side side : sides_of(vehicle.panels[static_cast<std::size_t>(p)].sides))
        if (!std::binary_search(left_out.begin(), left_out.end(), LeftOut{v, p, side}))
            ++sides;
    return sides;
}

PartsOff parts_off(const Vehicle& vehicle, int vehicle_index, const std::vector<LeftOut>& left_out,
                   const std::vector<std::string>& left_on) {
    Names needed;
    Names tied; // and what must come off before them
    for (const Hardware& part : vehicle.hardware)
        for (std::size_t p = 0; p < vehicle.panels.size(); ++p) {
            if (!tied_to(vehicle.panels[p], part.name))
                continue;
            need(vehicle, part.name, tied);
            if (sides_in(vehicle, vehicle_index, static_cast<int>(p), left_out) > 0)
                need(vehicle, part.name, needed);
        }
    for (const Hardware& part : vehicle.hardware)
        if (!holds(tied, part.name))
            need(vehicle, part.name, needed);
    PartsOff out;
    for (const Hardware& part : vehicle.hardware)
        if (!holds(left_on, part.name))
            (holds(needed, part.name) ? out.off : out.not_needed).push_back(part.name);
    return out;
}

std::vector<const Hardware*> in_order_of_taking_off(const Vehicle& vehicle, const Names& names) {
    std::vector<const Hardware*> out;
    Names done;
    for (bool found = true; found;) {
        found = false;
        for (const Hardware& part : vehicle.hardware) {
            const bool ready =
                std::all_of(part.after.begin(), part.after.end(),
                            [&](const std::string& name) { return holds(done, name); });
            if (!holds(names, part.name) || holds(done, part.name) || !ready)
                continue;
            out.push_back(&part);
            done.push_back(part.name);
            found = true;
            break;
        }
    }
    return out;
}

std::vector<std::string> coming_off(const std::vector<Vehicle>& vehicles,
                                    const std::vector<LeftOut>& left_out,
                                    const std::vector<std::string>& left_on) {
    Names out;
    for (std::size_t v = 0; v < vehicles.size(); ++v)
        for (const std::string& part :
             parts_off(vehicles[v], static_cast<int>(v), left_out, left_on).off)
            if (!holds(out, part))
                out.push_back(part);
    return out;
}

} // namespace pelt::order
