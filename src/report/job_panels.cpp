// SPDX-License-Identifier: MIT
#include "report/job_panels.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

bool has_panel(const Job& job, const std::string& name) {
    return std::any_of(job.vehicles.begin(), job.vehicles.end(), [&](const Vehicle& v) {
        return std::any_of(v.panels.begin(), v.panels.end(),
                           [&](const Panel& panel) { return panel.name == name; });
    });
}

} // namespace

std::map<PanelKey, PieceId> panels_cut(const Plan& plan) {
    std::map<PanelKey, PieceId> panels;
    for (const Piece& piece : plan.job().pieces)
        for (const PieceId& id : piece.ids)
            panels.emplace(PanelKey{id.vehicle, id.panel}, id);
    return panels;
}

bool is_of_this_job(const Sheet& sheet, const std::string& panel) {
    const Job& job = sheet.plan.job();
    const auto panels = panels_cut(sheet.plan);
    return !has_panel(job, panel) ||
           std::any_of(panels.begin(), panels.end(), [&](const auto& entry) {
               return panel_of(job, entry.first).name == panel;
           });
}

const Panel& panel_of(const Job& job, const PanelKey& key) {
    return job.vehicles.at(static_cast<std::size_t>(key.first))
        .panels.at(static_cast<std::size_t>(key.second));
}

} // namespace pelt::report
