// SPDX-License-Identifier: MIT
#include "report/compare.hpp"

#include "report/csv_text.hpp"
#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/findings.hpp"
#include "report/json_text.hpp"
#include "report/numbers.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

std::int64_t seams_added(const Sheet& sheet) {
    const std::vector<Seam>& seams = sheet.plan.job().seams;
    return std::count_if(seams.begin(), seams.end(), [](const Seam& seam) { return seam.added; });
}

std::string total_text(const Sheet& sheet) {
    return sheet.order.total ? to_string(*sheet.order.total, sheet.plan.job().film.money_digits)
                             : "";
}

Json json_row(const Compared& row) {
    JsonObject out;
    out.add("film", json_text(row.film.name)).add("roll_width_mm", json_mm(row.film.width));
    const auto add = [&](std::string_view name, const auto& value) {
        out.add(name, row.sheet ? value(*row.sheet) : json_null);
    };
    add("length_mm", [](const Sheet& s) { return json_mm(length_of(s.plan)); });
    add("bound_mm", [](const Sheet& s) { return json_mm(s.plan.layout().bound.length); });
    add("waste_percent", [](const Sheet& s) {
        return json_number(decimal(waste_micropercent(areas_of(s.plan)), 6, 4));
    });
    add("order_mm", [](const Sheet& s) { return json_mm(s.order.length()); });
    add("total", [](const Sheet& s) { return json_text_or_null(total_text(s)); });
    add("currency", [](const Sheet& s) { return json_text_or_null(s.order.currency); });
    add("pieces", [](const Sheet& s) {
        return json_whole(static_cast<std::int64_t>(pieces_by_number(s.plan).size()));
    });
    add("seams_added", [](const Sheet& s) { return json_whole(seams_added(s)); });
    add("over_stretch", [](const Sheet& s) {
        return json_whole(static_cast<std::int64_t>(over_the_stretch_limit(s).size()));
    });
    return out.add("why_not", json_text_or_null(row.why_not)).on_one_line();
}

std::vector<std::string> csv_figures(const Sheet& sheet) {
    return {decimal(length_of(sheet.plan), 3, 0),
            decimal(sheet.plan.layout().bound.length, 3, 0),
            decimal(waste_micropercent(areas_of(sheet.plan)), 6, 4),
            decimal(sheet.order.length().pm(), 9, 0),
            total_text(sheet),
            csv_text(sheet.order.currency),
            std::to_string(pieces_by_number(sheet.plan).size()),
            std::to_string(seams_added(sheet)),
            std::to_string(over_the_stretch_limit(sheet).size())};
}

std::vector<std::string> table_figures(const Sheet& sheet, const Measures& measures) {
    const Areas areas = areas_of(sheet.plan);
    return {measures.film(sheet.order.length()),
            sheet.order.total ? money(*sheet.order.total, sheet.plan.job().film.money_digits,
                                      sheet.order.currency)
                              : "not known",
            measures.film(length_of(sheet.plan)),
            measures.film(sheet.plan.layout().bound.length, Rounding::down),
            percent(areas.film - areas.wrapped, areas.film),
            std::to_string(seams_added(sheet)),
            std::to_string(over_the_stretch_limit(sheet).size())};
}

} // namespace

std::string to_json(const Comparison& comparison) {
    std::vector<Json> rows;
    for (const Compared& row : comparison.rows)
        rows.push_back(json_row(row));
    return JsonObject()
               .add("schema", json_text("pelt.compare/1"))
               .add("vehicle", json_text(comparison.vehicle))
               .add("demonstration", json_bool(comparison.demonstration))
               .add("rows", json_lines(rows))
               .on_lines()
               .text +
           "\n";
}

std::string to_csv(const Comparison& comparison) {
    std::string text =
        csv_line({"film", "roll_width_mm", "length_mm", "bound_mm", "waste_percent", "order_mm",
                  "total", "currency", "pieces", "seams_added", "over_stretch", "why_not"});
    for (const Compared& row : comparison.rows) {
        std::vector<std::string> fields{csv_text(row.film.name), decimal(row.film.width, 3, 0)};
        const std::vector<std::string> figures =
            row.sheet ? csv_figures(*row.sheet) : std::vector<std::string>(9);
        fields.insert(fields.end(), figures.begin(), figures.end());
        fields.push_back(csv_text(row.why_not));
        text += csv_line(fields);
    }
    return text;
}

Document compare_report(const Comparison& comparison) {
    const Measures measures(comparison.unit);
    Table table;
    table.columns = {{"film", Align::left, true},          {"width", Align::right, false},
                     {"order", Align::right, false},       {"price", Align::right, false},
                     {"needed", Align::right, false},      {"at least", Align::right, false},
                     {"waste", Align::right, false},       {"seams added", Align::right, false},
                     {"over stretch", Align::right, false}};
    std::vector<std::string> impossible;
    for (const Compared& row : comparison.rows) {
        std::vector<std::string> cells{row.film.name, measures.size_with_unit(row.film.width)};
        const std::vector<std::string> figures =
            row.sheet ? table_figures(*row.sheet, measures) : std::vector<std::string>(7, "-");
        cells.insert(cells.end(), figures.begin(), figures.end());
        table.rows.push_back(cells);
        if (!row.sheet)
            impossible.push_back(row.film.name + ", " + measures.size_with_unit(row.film.width) +
                                 ": " + row.why_not);
    }
    Document out{
        Title{comparison.vehicle, comparison.demonstration ? "DEMONSTRATION: INVENTED DATA" : ""},
        table,
        Line{"At least: no layout of these pieces can be shorter. Over stretch: panels "
             "that ask more stretch than the film gives; where nothing was measured, "
             "nothing is counted."}};
    if (!impossible.empty())
        out.push_back(Items{"!", impossible});
    return out;
}

} // namespace pelt::report
