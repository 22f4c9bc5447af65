// SPDX-License-Identifier: MIT
#include "order/names.hpp"

namespace pelt::order {

std::string name_of(const Job& job, const PieceId& id) {
    const Vehicle& vehicle = job.vehicles[static_cast<std::size_t>(id.vehicle)];
    const Panel& panel = vehicle.panels[static_cast<std::size_t>(id.panel)];
    std::string text = panel.name;
    if (id.side != Side::centre)
        text += "/" + std::string(pelt::name_of(id.side));
    if (panel.count * job.times > 1)
        text += "/no " + std::to_string(no_of(id, panel.faces));
    if (id.parts > 1)
        text += "/" + std::to_string(id.part);
    if (id.kind == PieceKind::inlay)
        text += " (inlay " + id.inlay + ")";
    return job.vehicles.size() > 1 ? letter_of(id.vehicle) + ": " + text : text;
}

std::string listed(const std::set<std::string>& names) {
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : ", ") + name;
    return text;
}

std::string in_metres(Um length) {
    const Um mm = (length + um_per_mm - 1) / um_per_mm;
    const std::string decimals = std::to_string(1000 + mm % 1000).substr(1);
    return std::to_string(mm / 1000) + "." + decimals + " m";
}

} // namespace pelt::order
