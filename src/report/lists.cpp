// SPDX-License-Identifier: MIT
#include "report/lists.hpp"

#include "order/order.hpp"
#include "report/cut_steps.hpp"
#include "report/facts.hpp"
#include "report/figures.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

bool several_rolls(const Sheet& sheet) {
    return sheet.plan.layout().rolls.size() > 1;
}

std::vector<PieceId> ids_of(const std::vector<PlacedPiece>& pieces) {
    std::vector<PieceId> ids;
    for (const PlacedPiece& p : pieces)
        ids.push_back(p.id);
    return ids;
}

/// "2310 / 696": from the free end, from the near edge; by hand the roll edge that is not used is
/// slit off first.
std::string cut_at(const Sheet& sheet, const PlacedPiece& p, const Measures& measures) {
    const Plan& plan = sheet.plan;
    const Roll& roll = plan.job().rolls.at(plan.layout().rolls.at(p.roll).roll);
    const Box box = p.cut_box();
    const std::string place =
        measures.size(box.low.x) + " / " +
        measures.size(box.low.y - (plan.job().by == CutBy::straight ? roll.trim : 0));
    return several_rolls(sheet) ? roll.name + ": " + place : place;
}

std::vector<PlacedPiece> in_order_of_laying(const Sheet& sheet) {
    const std::vector<PlacedPiece> pieces = pieces_by_number(sheet.plan);
    std::vector<PlacedPiece> out;
    for (const std::size_t i : order::laying_order(sheet.plan.job(), ids_of(pieces)))
        out.push_back(pieces[i]);
    return out;
}

std::vector<std::string> laying_row(const Sheet& sheet, const PlacedPiece& p,
                                    const Measures& measures) {
    const Box cut = p.cut_box();
    const Box finished = p.finished_box();
    return {"[  ]",
            std::to_string(p.number),
            label_of(sheet.plan.job(), p.id),
            side_text(p.id.side),
            measures.sides(cut.along(), cut.across()),
            measures.sides(finished.along(), finished.across()),
            cut_at(sheet, p, measures)};
}

std::string from_text(RulerFrom from) {
    switch (from) {
    case RulerFrom::free_end:
        return "free end";
    case RulerFrom::cut_end:
        return "cut end";
    case RulerFrom::near_edge:
        return "near edge";
    }
    return "";
}

const Roll& roll_of(const Sheet& sheet, std::size_t used_roll) {
    return sheet.plan.job().rolls.at(sheet.plan.layout().rolls.at(used_roll).roll);
}

std::string freed_text(const CutStep& step, const Roll& roll, const Measures& measures) {
    std::vector<std::string> texts;
    if (!step.frees.empty())
        texts.push_back(number_runs(step.frees));
    for (const FilmAway& film : step.falls_away)
        texts.push_back(left_over_text(film, roll, measures));
    if (step.frees_roll_edge)
        texts.push_back("roll edge");
    if (step.takes_off_the_roll)
        texts.push_back("the rest stays on the roll");
    return listed(texts);
}

std::string divided_text(const CutStep& step, const Measures& measures) {
    switch (step.of) {
    case CutStep::Divides::roll:
        return step.across ? "the roll at " + measures.size(step.running) : "the roll";
    case CutStep::Divides::strip:
        return "strip with " + number_runs(step.divides);
    case CutStep::Divides::part:
        return "film in hand with " + number_runs(step.divides);
    }
    return "";
}

bool any_estimate(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    const std::vector<PlacedPiece> pieces = pieces_by_number(sheet.plan);
    return std::any_of(pieces.begin(), pieces.end(), [&](const PlacedPiece& p) {
        return stretch_of(job, p.id).is == StretchAsked::Is::estimate;
    });
}

Table laying_table_of(const std::vector<PlacedPiece>& in_order, const Sheet& sheet,
                      const Measures& measures) {
    Table table;
    table.columns = {{"done", Align::left, false},      {"no.", Align::right, false},
                     {"panel", Align::left, true},      {"side", Align::left, false},
                     {"cut size", Align::right, false}, {"finished", Align::right, false},
                     {"cut at", Align::right, false}};
    for (const PlacedPiece& p : in_order)
        table.rows.push_back(laying_row(sheet, p, measures));
    return table;
}

} // namespace

Table laying_table(const Sheet& sheet, const Measures& measures) {
    return laying_table_of(in_order_of_laying(sheet), sheet, measures);
}

Table laying_table_in_full(const Sheet& sheet, const Measures& measures) {
    const std::vector<PlacedPiece> in_order = in_order_of_laying(sheet);
    Table table = laying_table_of(in_order, sheet, measures);
    table.columns.push_back({"stays on", Align::right, false});
    table.columns.push_back({"stretch", Align::right, false});
    std::size_t row = 0;
    for (const PlacedPiece& p : in_order) {
        table.rows[row].push_back(measures.area(doubled_area(p.piece.wrapped)));
        table.rows[row].push_back(stretch_text(stretch_of(sheet.plan.job(), p.id)));
        ++row;
    }
    return table;
}

Table cuts_table(const Sheet& sheet, std::size_t used_roll, const Measures& measures) {
    Table table;
    table.columns = {{"cut", Align::right, false},   {"how", Align::left, true},
                     {"ruler", Align::right, false}, {"from", Align::left, true},
                     {"divides", Align::left, true}, {"comes free", Align::left, true}};
    const Roll& roll = roll_of(sheet, used_roll);
    for (const CutStep& step : cut_steps(sheet.plan, pieces_by_number(sheet.plan), used_roll))
        table.rows.push_back({std::to_string(step.number),
                              step.across ? "cut across" : "slit along", measures.size(step.ruler),
                              from_text(step.from), divided_text(step, measures),
                              freed_text(step, roll, measures)});
    return table;
}

Table cuts_to_tick(const Sheet& sheet, std::size_t used_roll, const std::vector<CutStep>& steps,
                   const Measures& measures) {
    const Roll& roll = roll_of(sheet, used_roll);
    const Um used = sheet.plan.layout().rolls.at(used_roll).length;
    const Length there = available_of(sheet, used_roll).value_or(Length::from_um(used));
    Table table;
    table.columns = {{"", Align::left, false},    {"cut", Align::right, false},
                     {"how", Align::left, false}, {"ruler", Align::right, false, true},
                     {"of", Align::left, false},  {"comes free", Align::left, true}};
    for (CutStep step : steps) {
        const bool off_the_roll = step.across && step.of == CutStep::Divides::roll;
        step.takes_off_the_roll = false; // how much stays there is said instead
        std::string free = freed_text(step, roll, measures);
        if (off_the_roll)
            free += (free.empty() ? "roll " : ", roll ") +
                    measures.film(there - Length::from_um(step.running), Rounding::down);
        table.rows.push_back({"[  ]", std::to_string(step.number), step.across ? "across" : "along",
                              measures.size(step.ruler),
                              step.of == CutStep::Divides::roll ? "roll"
                                                                : number_runs(step.divides),
                              free});
    }
    return table;
}

std::string how_to_tick_the_cuts() {
    return "A cut across: measure from the end of the film in front of you, the one toward the "
           "free end. A cut along: measure from its near edge. \"Of\" names the pieces in the film that "
           "is divided; after a cut of the roll itself, \"roll\" is what is left on it.";
}

std::string how_to_set_the_ruler() {
    return "Measure from the edge named, of the film in front of you. The cut end is its end "
           "toward the free end. Places on the roll count from the roll's own free end.";
}

std::string stretch_note(const Sheet& sheet) {
    const std::optional<double> limit = sheet.plan.job().film.stretch_panel_percent;
    std::string text = limit
                           ? "Stretch: what the panel asks; the film gives " + percent(*limit) + "."
                           : "Stretch: what the panel asks; what the film gives is not known.";
    if (any_estimate(sheet))
        text += " About: an estimate, right within a tenth of the figure.";
    return text;
}

Table pieces_table(const Sheet& sheet, const Measures& measures) {
    Table table;
    table.columns = {{"no.", Align::right, false},          {"panel", Align::left, true},
                     {"side", Align::left, false},          {"roll", Align::left, false},
                     {"arrow", Align::left, false},         {"on the vehicle", Align::right, false},
                     {"stretch asked", Align::right, false}};
    for (const PlacedPiece& p : pieces_by_number(sheet.plan))
        table.rows.push_back({std::to_string(p.number), label_of(sheet.plan.job(), p.id),
                              side_text(p.id.side), roll_name(sheet, p.roll),
                              arrow_of(p.turn), measures.area(doubled_area(p.piece.wrapped)),
                              stretch_text(stretch_of(sheet.plan.job(), p.id))});
    return table;
}

} // namespace pelt::report
