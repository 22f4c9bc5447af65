// SPDX-License-Identifier: MIT
#include "report/area.hpp"

#include "report/csv_text.hpp"
#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/json_text.hpp"
#include "report/numbers.hpp"
#include "report/page_head.hpp"
#include "report/verdict.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

using Thousandths = std::optional<std::int64_t>;

Thousandths cut_of(const PanelArea& row) {
    return row.cut_mm2 ? Thousandths(thousandths(*row.cut_mm2)) : std::nullopt;
}

struct Total {
    std::int64_t visible = 0;
    DoubleArea wrapped = 0;
    Thousandths cut = 0;
};

Total total_of(const AreaSheet& sheet) {
    Total total;
    for (const PanelArea& row : sheet.rows) {
        const Thousandths cut = cut_of(row);
        total.visible += row.count * thousandths(row.visible_mm2);
        total.wrapped += row.count * doubled_area(row.wrapped);
        total.cut = total.cut && cut ? Thousandths(*total.cut + row.count * *cut) : std::nullopt;
    }
    return total;
}

Json json_thousandths(const Thousandths& value) {
    return value ? json_number(decimal(*value, 3, 1)) : json_null;
}

Json json_percent(const std::optional<double>& value) {
    return value ? json_number(rounded_percent(*value)) : json_null;
}

Json json_verdict(const PanelArea& row, const AreaSheet& sheet) {
    const auto lies = how_it_lies(row.stretch, sheet.stretch_limit);
    return lies ? json_text(name_of(*lies)) : json_null;
}

Json json_division(const PanelArea& row, const AreaSheet& sheet) {
    const auto division = division_for(row.stretch, sheet.stretch_limit);
    if (!division)
        return json_null;
    return JsonObject()
        .add("kind", json_text(name_of(division->kind)))
        .add("pieces", json_whole(division->pieces))
        .add("seam_mm", json_number(rounded_percent(division->cut_mm)))
        .add("stretch_percent", json_number(rounded_percent(division->stretch_percent)))
        .on_one_line();
}

Json json_row(const PanelArea& row, const AreaSheet& sheet) {
    const Box box = box_of(row.wrapped.outer);
    const bool known = row.stretch.is != StretchAsked::Is::unknown;
    return JsonObject()
        .add("panel", json_text(row.panel))
        .add("side", json_text(name_of(row.side)))
        .add("count", json_whole(row.count))
        .add("visible_mm2", json_thousandths(thousandths(row.visible_mm2)))
        .add("wrapped_mm2", json_mm2(doubled_area(row.wrapped)))
        .add("cut_mm2", json_thousandths(cut_of(row)))
        .add("size_mm", json_point({box.along(), box.across()}))
        .add("stretch_percent",
             known ? json_number(rounded_percent(row.stretch.percent)) : json_null)
        .add("stretch_is", json_text(name_of(row.stretch.is)))
        .add("natural_stretch_percent", json_percent(row.stretch.natural_percent))
        .add("bound_stretch_percent", json_percent(row.stretch.bound_percent))
        .add("stretch_at_most_percent", json_null) // nothing tells one; kept for who reads it
        .add("surface_mm2",
             json_thousandths(row.surface_mm2 ? Thousandths(thousandths(*row.surface_mm2))
                                              : std::nullopt))
        .add("verdict", json_verdict(row, sheet))
        .add("guessed", json_bool(row.guessed))
        .add("split", json_division(row, sheet))
        .on_one_line();
}

Json json_warnings(const Faults& faults) {
    std::vector<Json> items;
    for (const Fault& fault : faults)
        if (fault.severity == Severity::warning)
            items.push_back(JsonObject()
                                .add("panel", json_text_or_null(fault.panel))
                                .add("text", json_text(sentence_of(fault)))
                                .on_one_line());
    return json_lines(items);
}

std::string csv_row(const PanelArea& row, const AreaSheet& sheet) {
    const Box box = box_of(row.wrapped.outer);
    const Thousandths cut = cut_of(row);
    const bool known = row.stretch.is != StretchAsked::Is::unknown;
    const auto lies = how_it_lies(row.stretch, sheet.stretch_limit);
    return csv_line(
        {csv_text(row.panel), std::string(name_of(row.side)), std::to_string(row.count),
         decimal(thousandths(row.visible_mm2), 3, 0), decimal(doubled_area(row.wrapped) * 5, 7, 0),
         cut ? decimal(*cut, 3, 0) : "", decimal(box.along(), 3, 0), decimal(box.across(), 3, 0),
         known ? rounded_percent(row.stretch.percent) : "", std::string(name_of(row.stretch.is)),
         row.stretch.natural_percent ? rounded_percent(*row.stretch.natural_percent) : "",
         row.stretch.bound_percent ? rounded_percent(*row.stretch.bound_percent) : "",
         "", // stretch_at_most_percent
         row.surface_mm2 ? decimal(thousandths(*row.surface_mm2), 3, 0) : "",
         lies ? std::string(name_of(*lies)) : "", row.guessed ? "yes" : "no"});
}

Table area_rows(const AreaSheet& sheet, const Measures& measures) {
    Table table;
    table.columns = {{"panel", Align::left, true},        {"side", Align::left, false},
                     {"count", Align::right, false},      {"visible", Align::right, false},
                     {"with tucks", Align::right, false}, {"as cut", Align::right, false},
                     {"size", Align::right, false},       {"stretch asked", Align::right, false}};
    const auto number = [&](std::int64_t area) {
        return measures.area_number(DoubleArea{area} * 2000);
    };
    const auto cut_text = [&](const Thousandths& cut) { return cut ? number(*cut) : "-"; };
    for (const PanelArea& row : sheet.rows) {
        const Box box = box_of(row.wrapped.outer);
        table.rows.push_back({row.guessed ? row.panel + " (guessed)" : row.panel,
                              side_text(row.side), std::to_string(row.count),
                              number(thousandths(row.visible_mm2)),
                              measures.area_number(doubled_area(row.wrapped)),
                              cut_text(cut_of(row)), measures.sides(box.along(), box.across()),
                              stretch_text(row.stretch)});
    }
    const Total total = total_of(sheet);
    table.rows.push_back({"all", "", "", number(total.visible), measures.area_number(total.wrapped),
                          cut_text(total.cut), "", ""});
    return table;
}

std::string what_helps(const StretchAsked& stretch, const AreaSheet& sheet) {
    const auto division = division_for(stretch, sheet.stretch_limit);
    return (division ? "holds with " + division_text(*division, stretch, sheet.unit) + "; or "
                     : std::string()) +
           (division && !division->estimate ? "take a softer film"
                                            : advice_on(stretch, *sheet.stretch_limit));
}

/// What is worth a word about the stretch: scans, and what does not lie down by itself.
std::vector<std::string> stretch_texts(const AreaSheet& sheet) {
    std::vector<std::string> texts;
    for (const PanelArea& row : sheet.rows) {
        const auto lies = how_it_lies(row.stretch, sheet.stretch_limit);
        if (!row.map && (!lies || *lies == Lies::ok))
            continue;
        std::string text = row.panel + ": stretch asked: " + stretch_text(row.stretch);
        if (sheet.stretch_limit)
            text += " (film: " + percent(*sheet.stretch_limit) + ")";
        if (lies)
            text += ": " + in_words(*lies);
        if (row.map)
            text += "; " + where_most(*row.map);
        if (lies == Lies::split)
            text += "; " + what_helps(row.stretch, sheet);
        if (texts.empty() || texts.back() != text)
            texts.push_back(text);
    }
    return texts;
}

bool has_guessed(const AreaSheet& sheet) {
    return std::any_of(sheet.rows.begin(), sheet.rows.end(),
                       [](const PanelArea& row) { return row.guessed; });
}

std::vector<std::string> warning_texts(const Faults& faults, Unit unit) {
    std::vector<std::string> texts;
    for (const Fault& fault : told_together(faults))
        if (fault.severity == Severity::warning)
            texts.push_back((fault.panel.empty() ? "" : fault.panel + ": ") +
                            sentence_of(fault, unit));
    return texts;
}

} // namespace

std::string to_json(const AreaSheet& sheet) {
    std::vector<Json> rows;
    for (const PanelArea& row : sheet.rows)
        rows.push_back(json_row(row, sheet));
    const Total total = total_of(sheet);
    return JsonObject()
               .add("schema", json_text("pelt.area/1"))
               .add("vehicle", json_text(sheet.vehicle))
               .add("film", json_text_or_null(sheet.film))
               .add("demonstration", json_bool(sheet.demonstration))
               .add("panels", json_lines(rows))
               .add("total", JsonObject()
                                 .add("visible_mm2", json_thousandths(total.visible))
                                 .add("wrapped_mm2", json_mm2(total.wrapped))
                                 .add("cut_mm2", json_thousandths(total.cut))
                                 .on_one_line())
               .add("warnings", json_warnings(sheet.warnings))
               .on_lines()
               .text +
           "\n";
}

std::string to_csv(const AreaSheet& sheet) {
    std::string text =
        csv_line({"panel", "side", "count", "visible_mm2", "wrapped_mm2", "cut_mm2", "along_x_mm",
                  "along_y_mm", "stretch_percent", "stretch_is", "natural_stretch_percent",
                  "bound_stretch_percent", "stretch_at_most_percent", "surface_mm2", "verdict",
                  "guessed"});
    for (const PanelArea& row : sheet.rows)
        text += csv_row(row, sheet);
    return text;
}

Document area_report(const AreaSheet& sheet) {
    const Measures measures(sheet.unit);
    const bool guessed = has_guessed(sheet);
    Document out = page_head(sheet.vehicle, guessed, sheet.demonstration);
    if (guessed)
        out.push_back(Line{"Panels marked \"guessed\" are scaled from another vehicle: measure "
                           "before you buy."});
    if (!sheet.film.empty())
        out.push_back(Line{"Film: " + sheet.film +
                           (sheet.stretch_limit
                                ? ", gives " + percent(*sheet.stretch_limit) + " stretch on a panel"
                                : ", stretch not known")});
    const std::vector<std::string> warnings = warning_texts(sheet.warnings, sheet.unit);
    if (!warnings.empty())
        out.push_back(Items{"!", warnings});
    out.push_back(Heading{"PANELS"});
    out.push_back(area_rows(sheet, measures));
    const std::vector<std::string> stretches = stretch_texts(sheet);
    if (!stretches.empty()) {
        out.push_back(Heading{"STRETCH"});
        out.push_back(Items{"-", stretches});
    }
    out.push_back(Line{"Areas are in " + measures.area_unit() +
                       "; they and the sizes are of one panel, the last row is of all. Sizes are "
                       "those "
                       "of the film that stays on, along x and y of the drawing, in " +
                       measures.sizes_in_words() +
                       ". Overlaps at seams and inlays are not in them: 'pelt cut' counts those."});
    return out;
}

std::string to_table(const AreaSheet& sheet, const TextStyle& style) {
    return to_text(area_report(sheet), style);
}

std::string to_markdown(const AreaSheet& sheet) {
    return to_markdown(area_report(sheet));
}

} // namespace pelt::report
