// SPDX-License-Identifier: MIT
#include "report/findings.hpp"

#include "report/facts.hpp"
#include "report/plausibility.hpp"
#include "report/verdict.hpp"
#include "report/words.hpp"
#include "trade/rolls.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace pelt::report {
namespace {

using PanelKey = std::pair<int, int>; ///< vehicle, panel

/// The panels that have a piece in the plan, in the files' order, with one of its ids.
std::map<PanelKey, PieceId> panels_cut(const Plan& plan) {
    std::map<PanelKey, PieceId> panels;
    for (const Piece& piece : plan.job().pieces)
        for (const PieceId& id : piece.ids)
            panels.emplace(PanelKey{id.vehicle, id.panel}, id);
    return panels;
}

bool has_panel(const Job& job, const std::string& name) {
    return std::any_of(job.vehicles.begin(), job.vehicles.end(), [&](const Vehicle& v) {
        return std::any_of(v.panels.begin(), v.panels.end(),
                           [&](const Panel& panel) { return panel.name == name; });
    });
}

/// False for a panel that was left out: what is wrong with it is not this sheet's business.
bool is_of_this_job(const Sheet& sheet, const std::string& panel) {
    const Job& job = sheet.plan.job();
    const auto panels = panels_cut(sheet.plan);
    return !has_panel(job, panel) ||
           std::any_of(panels.begin(), panels.end(), [&](const auto& entry) {
               const auto& [vehicle, index] = entry.first;
               return job.vehicles.at(static_cast<std::size_t>(vehicle))
                          .panels.at(static_cast<std::size_t>(index))
                          .name == panel;
           });
}

std::vector<Finding> warnings_of(const Sheet& sheet, Unit unit, bool together) {
    Faults warnings;
    std::copy_if(sheet.warnings.begin(), sheet.warnings.end(), std::back_inserter(warnings),
                 [&](const Fault& fault) {
                     return fault.severity == Severity::warning &&
                            is_of_this_job(sheet, fault.panel);
                 });
    std::vector<Finding> out;
    for (const Fault& fault : together ? told_together(warnings) : warnings)
        out.push_back({fault.panel, sentence_of(fault, unit)});
    return out;
}

Um least_margin(const PlacedPiece& p) {
    const Box cut = p.cut_box();
    const Box finished = p.finished_box();
    return std::min({finished.low.x - cut.low.x, finished.low.y - cut.low.y,
                     cut.high.x - finished.high.x, cut.high.y - finished.high.y});
}

std::vector<Finding> narrow_margins(const Sheet& sheet, const Measures& measures) {
    const Job& job = sheet.plan.job();
    if (job.by != CutBy::straight)
        return {};
    std::map<PanelKey, Um> least;
    for (const PlacedPiece& p : pieces_by_number(sheet.plan)) {
        const Um margin = least_margin(p);
        const auto entry = least.emplace(PanelKey{p.id.vehicle, p.id.panel}, margin).first;
        entry->second = std::min(entry->second, margin);
    }
    std::vector<std::string> names;
    for (const auto& [key, margin] : least)
        if (margin < trade::comfortable_margin)
            names.push_back(panel_label(job, key.first, key.second) + " " +
                            measures.size(margin, Rounding::down));
    if (names.empty())
        return {};
    return {{"", "margin to grip under " + measures.size_with_unit(trade::comfortable_margin) +
                     ": " + listed(names) + " (" + measures.size_unit() + ")"}};
}

const Panel& panel_of(const Job& job, const PanelKey& key) {
    return job.vehicles.at(static_cast<std::size_t>(key.first))
        .panels.at(static_cast<std::size_t>(key.second));
}

std::vector<Finding> stretch_not_checked(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    if (!job.film.stretch_panel_percent)
        return {{"", "stretch not checked: the film file gives no limit"}};
    std::vector<std::string> names;
    const auto panels = panels_cut(sheet.plan);
    for (const auto& [key, id] : panels)
        if (stretch_of(job, id).is == StretchAsked::Is::unknown)
            names.push_back(panel_label(job, key.first, key.second));
    if (names.empty())
        return {};
    const std::string which =
        names.size() == panels.size() ? "on any panel" : "on " + listed(names);
    return {{"", "stretch not checked " + which + ": no rise was measured there"}};
}

/// The openings of a panel that must stay uncovered, by what they are kept clear for.
std::map<std::string, std::vector<std::string>> zones_of(const Panel& panel) {
    std::map<std::string, std::vector<std::string>> zones;
    for (const Opening& opening : panel.openings)
        if (!opening.keep_clear.empty())
            zones[opening.keep_clear].push_back(opening.name);
    return zones;
}

/// Zones within the film. Film that holds metal over a whole panel is warned of by `piece`.
std::vector<Finding> keep_clear(const Sheet& sheet) {
    std::vector<Finding> out;
    const Job& job = sheet.plan.job();
    for (const auto& [key, id] : panels_cut(sheet.plan)) {
        const Panel& panel = panel_of(job, key);
        const std::string label = panel_label(job, key.first, key.second);
        if (!panel.keep_clear.empty() && job.film.holds_metal == HoldsMetal::no)
            out.push_back({label, "keep clear: " + panel.keep_clear +
                                      "; this film's file says that it holds no metal"});
        for (const auto& [kind, names] : zones_of(panel))
            out.push_back({label, "keep clear (" + kind + "): leave uncovered " + listed(names)});
    }
    return out;
}

std::vector<Finding> about_the_length(const Sheet& sheet, const Measures& measures) {
    if (!is_unusual(sheet.plan))
        return {};
    return {{"", plausibility(sheet.plan, measures).value_or("")}};
}

} // namespace

std::vector<Finding> over_the_stretch_limit(const Sheet& sheet) {
    std::vector<Finding> out;
    const Job& job = sheet.plan.job();
    const std::optional<double> limit = job.film.stretch_panel_percent;
    if (!limit)
        return out;
    for (const auto& [key, id] : panels_cut(sheet.plan)) {
        const StretchAsked stretch = stretch_of(job, id);
        const auto lies = how_it_lies(stretch, limit);
        if (!lies || *lies == Lies::ok)
            continue;
        std::string text = "stretch asked: " + stretch_text(stretch) +
                           " (film: " + percent(*limit) + "): " + in_words(*lies);
        if (*lies == Lies::split)
            text += "; " + advice_on(stretch, *limit);
        out.push_back({panel_label(job, key.first, key.second), text});
    }
    return out;
}

std::vector<Finding> added_seams(const Sheet& sheet, const Measures& measures) {
    const Job& job = sheet.plan.job();
    std::vector<Finding> out;
    for (const Seam& seam : job.seams)
        if (seam.added)
            out.push_back({panel_label(job, seam.vehicle, seam.panel, seam.side),
                           "seam added, " + measures.size_with_unit(seam.length) + " long, " +
                               place_text(seam.place, measures) + "; piece " +
                               std::to_string(seam.upper_part) + " laps over piece " +
                               std::to_string(seam.under_part)});
    return out;
}

std::vector<Finding> other_findings(const Sheet& sheet, const Measures& measures, bool together) {
    std::vector<Finding> out;
    for (const std::vector<Finding>& some :
         {over_the_stretch_limit(sheet), warnings_of(sheet, measures.unit(), together),
          narrow_margins(sheet, measures), stretch_not_checked(sheet), keep_clear(sheet),
          about_the_length(sheet, measures)})
        for (const Finding& finding : some)
            if (std::find(out.begin(), out.end(), finding) == out.end())
                out.push_back(finding);
    return out;
}

} // namespace pelt::report
