// SPDX-License-Identifier: MIT
#include "order/redo.hpp"

#include "order/order.hpp"
#include "trade/redo.hpp"

#include <algorithm>
#include <set>
#include <utility>

namespace pelt::order {
namespace {

constexpr double most = 95;

bool is_curved(const Panel& panel) {
    return panel.crown.has_value() || !std::holds_alternative<OutlineForm>(panel.form);
}

double usual_percent(const Film& film, const Panel& panel) {
    const double factor = film.kind ? trade::redo_factor(*film.kind, is_curved(panel)) : 1;
    return trade::redo_percent(panel.is.value_or(PanelKind::plain_panel)) * factor;
}

/// What the log has of such panels in such film.
std::optional<Tried> tried_of(const Job& job, const Panel& panel) {
    if (!job.learnt || !job.film.kind || !panel.is)
        return std::nullopt;
    const auto found = job.learnt->redo.find({*panel.is, *job.film.kind});
    return found == job.learnt->redo.end() ? std::nullopt : std::optional(found->second);
}

bool asks_too_much(const Job& job, int vehicle, int panel) {
    const auto v = static_cast<std::size_t>(vehicle);
    const auto p = static_cast<std::size_t>(panel);
    if (!job.film.stretch_panel_percent || v >= job.developed.size() ||
        p >= job.developed[v].size())
        return false;
    const StretchAsked& stretch = job.developed[v][p].stretch;
    return stretch.is != StretchAsked::Is::unknown &&
           stretch.percent > *job.film.stretch_panel_percent;
}

} // namespace

RedoChance redo_chance(const Job& job, int vehicle, int panel) {
    const Panel& of =
        job.vehicles[static_cast<std::size_t>(vehicle)].panels[static_cast<std::size_t>(panel)];
    if (of.redo_percent)
        return {vehicle, panel, *of.redo_percent, false, std::nullopt};
    const std::optional<Tried> tried = tried_of(job, of);
    double percent = std::min(usual_percent(job.film, of), most);
    if (tried)
        percent = updated_percent(percent, *tried);
    if (asks_too_much(job, vehicle, panel))
        percent = std::max(percent, trade::redo_percent_over_the_limit);
    return {vehicle, panel, std::min(percent, most), !tried, tried};
}

std::vector<RedoChance> redo_chances(const Job& job) {
    std::set<std::pair<int, int>> panels;
    for (const Piece& piece : job.pieces)
        for (const PieceId& id : piece.ids)
            panels.emplace(id.vehicle, id.panel);
    std::vector<RedoChance> out;
    for (const auto& [vehicle, panel] : panels)
        out.push_back(redo_chance(job, vehicle, panel));
    return out;
}

} // namespace pelt::order
