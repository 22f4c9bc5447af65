// SPDX-License-Identifier: MIT
// What a sheet says without asking for a decision.
#include "model/marked_length.hpp"
#include "order/order.hpp"
#include "report/facts.hpp"
#include "report/findings.hpp"
#include "report/job_panels.hpp"
#include "report/verdict.hpp"
#include "report/words.hpp"
#include "trade/cautions.hpp"
#include "trade/names.hpp"
#include "trade/rolls.hpp"

#include <algorithm>
#include <map>
#include <utility>

namespace pelt::report {
namespace {

using Texts = std::vector<std::string>;
using Pieces = std::vector<PlacedPiece>;

/// Marks whose panels did not all have room in the sentence.
Texts marked_in_full(const Sheet& sheet, const Measures& measures) {
    Texts out;
    for (const GatheredMark& mark : gathered(marks_of(sheet, measures)))
        if (!mark.panels.empty() && !mark.names_all())
            out.push_back("Marked '" + mark.what + "': " + listed(mark.panels) + ".");
    return out;
}

/// A remark that several panels have in common.
struct Gathering {
    std::string what;
    std::string remedy;
    Texts panels;
    std::string joint; ///< a semicolon where panels have figures of their own
};

Gathering& home_of(const Fault& fault, std::vector<Gathering>& all) {
    const std::string& what = fault.common.empty() ? fault.what : fault.common;
    const auto same = std::find_if(all.begin(), all.end(), [&](const Gathering& other) {
        return other.what == what && other.remedy == fault.remedy;
    });
    return same == all.end() ? all.emplace_back(Gathering{what, fault.remedy, {}, ", "}) : *same;
}

void add_panel(const Job& job, const Fault& fault, Gathering& home) {
    const std::string own = own_of(fault);
    const bool has_figures = own.find('(') != std::string::npos;
    if (has_figures)
        home.joint = "; ";
    add_once(home.panels, panel_label(job, fault) + (own.empty()   ? ""
                                                     : has_figures ? " " + own
                                                                   : " (" + own + ")"));
}

/// What the stages before remark on: of several panels in one line.
Texts remarks(const Sheet& sheet, Unit unit) {
    std::vector<Gathering> gathered;
    for (const Fault& fault : sheet.warnings) {
        if (fault.severity != Severity::remark || !is_of_this_job(sheet, fault.panel))
            continue;
        Gathering& home = home_of(fault, gathered);
        if (!fault.panel.empty())
            add_panel(sheet.plan.job(), fault, home);
    }
    Texts out;
    for (const Gathering& one : gathered) {
        std::string text = capitalised(one.what);
        for (std::size_t i = 0; i < one.panels.size(); ++i)
            text += (i == 0 ? ": " : one.joint) + one.panels[i];
        out.push_back(in_unit(text + (one.remedy.empty() ? "" : "; " + one.remedy) + ".", unit));
    }
    return out;
}

bool is_flat(const Panel& panel) {
    return panel.is && trade::is_flat(*panel.is);
}

Texts about_the_stretch(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    const std::optional<double> limit = job.film.stretch_panel_percent;
    if (!limit)
        return {"Stretch not checked: the film file gives no limit."};
    Texts not_checked;
    Texts warmed;
    Texts in_strips;
    for (const auto& [key, id] : panels_cut(sheet.plan)) {
        const StretchAsked stretch = stretch_of(job, id);
        const std::string label = panel_label(job, key.first, key.second);
        if (stretch.is == StretchAsked::Is::unknown && !is_flat(panel_of(job, key)))
            not_checked.push_back(label);
        if (stretch.is == StretchAsked::Is::unknown)
            continue;
        const auto strips = strips_needed(stretch, *limit);
        const Asked asked = how_much_it_asks(stretch, *limit);
        if (asked == Asked::warming)
            warmed.push_back(label);
        if (asked == Asked::too_much && strips)
            in_strips.push_back(label + " about " + std::to_string(*strips));
    }
    Texts out;
    if (!warmed.empty())
        out.push_back("They lie down when warmed, spread and post-heated: " + listed(warmed) + ".");
    if (!in_strips.empty())
        out.push_back("In strips, the seams along their length, would lie down: " +
                      listed(in_strips) + ".");
    if (!not_checked.empty())
        out.push_back("Stretch not checked, since no rise was measured: " + listed(not_checked) +
                      ".");
    return out;
}

/// The zones of the pieces, cut out or covered.
struct Zones {
    std::map<std::string, Texts> cut_out; ///< by panel
    Texts covered;                        ///< "radar cover (radar)"
};

const Opening* opening_of(const Panel& panel, const std::string& name) {
    const auto found = std::find_if(panel.openings.begin(), panel.openings.end(),
                                    [&](const Opening& o) { return o.name == name; });
    return found == panel.openings.end() ? nullptr : &*found;
}

Zones zones_of(const Job& job, const Pieces& pieces) {
    Zones zones;
    for (const PlacedPiece& p : pieces) {
        if (p.id.kind != PieceKind::main)
            continue;
        const std::string label = panel_label(job, p.id.vehicle, p.id.panel);
        if (!p.panel.keep_clear.empty() && job.film.holds_metal == HoldsMetal::no)
            add_once(zones.covered, label + " (" + p.panel.keep_clear + ")");
        const PieceFinish finish = order::finish_of(job, p.piece, p.id);
        for (const OpeningFinish& open : finish.openings) {
            const Opening* opening = opening_of(p.panel, open.name);
            if (opening != nullptr && !opening->keep_clear.empty())
                add_once(zones.cut_out[label], open.name);
        }
        for (const CoveredOpening& covered : finish.covered) {
            const Opening* opening = opening_of(p.panel, covered.name);
            if (opening != nullptr && !opening->keep_clear.empty())
                add_once(zones.covered, label + " (" + covered.name + ")");
        }
    }
    return zones;
}

Texts keep_clear(const Job& job, const Pieces& pieces) {
    const Zones zones = zones_of(job, pieces);
    Texts out;
    Texts cut_out;
    for (const auto& [panel, names] : zones.cut_out)
        cut_out.push_back(panel + " (" + listed(names) + ")");
    if (cut_out.empty() && zones.covered.empty())
        return {};
    std::string text = "Keep clear";
    if (!cut_out.empty())
        text += ", cut out: " + listed(cut_out);
    if (!zones.covered.empty())
        text += std::string(cut_out.empty() ? "," : ";") +
                " covered, only where the vehicle's maker allows it: " + listed(zones.covered);
    return {text + "."};
}

Texts cutting_on_the_vehicle(const Job& job, const Pieces& pieces) {
    const bool any = std::any_of(pieces.begin(), pieces.end(), [&](const PlacedPiece& p) {
        if (p.id.kind == PieceKind::inlay)
            return true;
        const std::vector<OpeningFinish> openings = order::finish_of(job, p.piece, p.id).openings;
        return std::any_of(openings.begin(), openings.end(),
                           [](const OpeningFinish& opening) { return !opening.at_table; });
    });
    if (!any)
        return {};
    return {"What is cut on the vehicle, openings, inlays and reliefs, is cut over cutting tape, "
            "never on paint."};
}

Um least_margin(const PlacedPiece& p) {
    const Box cut = p.cut_box();
    const Box finished = p.finished_box();
    return std::min({finished.low.x - cut.low.x, finished.low.y - cut.low.y,
                     cut.high.x - finished.high.x, cut.high.y - finished.high.y});
}

Texts narrow_margins(const Job& job, const Pieces& pieces, const Measures& measures) {
    if (job.by != CutBy::straight)
        return {};
    std::map<PanelKey, Um> least;
    for (const PlacedPiece& p : pieces) {
        const Um margin = least_margin(p);
        const auto entry = least.emplace(PanelKey{p.id.vehicle, p.id.panel}, margin).first;
        entry->second = std::min(entry->second, margin);
    }
    Texts names;
    for (const auto& [key, margin] : least)
        if (margin < trade::comfortable_margin)
            names.push_back(panel_label(job, key.first, key.second) + " " +
                            measures.size(margin, Rounding::down));
    if (names.empty())
        return {};
    return {"Margin to grip under " + measures.size_with_unit(trade::comfortable_margin) + ": " +
            listed(names) + " (" + measures.size_unit() + ")."};
}

Texts two_people(const Job& job, const Pieces& pieces, const Measures& measures) {
    Texts names;
    for (const PlacedPiece& p : pieces) {
        const Box box = p.finished_box();
        if (std::max(box.along(), box.across()) > trade::two_people_above)
            add_once(names, panel_label(job, p.id.vehicle, p.id.panel));
    }
    if (names.empty())
        return {};
    return {"Over " + measures.size_with_unit(trade::two_people_above) +
            ", so for two people: " + listed(names) + "."};
}

} // namespace

std::vector<std::string> notes_of(const Sheet& sheet, const Measures& measures) {
    const Job& job = sheet.plan.job();
    const Pieces pieces = pieces_by_number(sheet.plan);
    Texts out;
    for (const Texts& some :
         {marked_in_full(sheet, measures), about_the_stretch(sheet),
          remarks(sheet, measures.unit()), keep_clear(job, pieces),
          cutting_on_the_vehicle(job, pieces), narrow_margins(job, pieces, measures),
          two_people(job, pieces, measures)})
        for (const std::string& text : some)
            add_once(out, text);
    return out;
}

std::string covered_openings(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    std::vector<std::pair<std::string, std::vector<int>>> grouped;
    for (const PlacedPiece& p : pieces_by_number(sheet.plan)) {
        if (p.id.kind != PieceKind::main)
            continue;
        Texts names;
        for (const CoveredOpening& opening : order::finish_of(job, p.piece, p.id).covered)
            names.push_back(opening.name);
        if (names.empty())
            continue;
        const std::string text = listed(names);
        auto home = std::find_if(grouped.begin(), grouped.end(),
                                 [&](const auto& entry) { return entry.first == text; });
        if (home == grouped.end())
            home = grouped.insert(grouped.end(), {text, {}});
        home->second.push_back(p.number);
    }
    Texts all;
    for (const auto& [names, numbers] : grouped)
        all.push_back(number_runs(numbers) + " (" + names + ")");
    return all.empty() ? "" : "Covered; cut open when the part goes back: " + listed(all) + ".";
}

} // namespace pelt::report
