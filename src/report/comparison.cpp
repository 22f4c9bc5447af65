// SPDX-License-Identifier: MIT
#include "report/csv_text.hpp"
#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/json_text.hpp"
#include "report/numbers.hpp"
#include "report/ranking.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

std::size_t pieces_of(const Sheet& sheet) {
    std::size_t count = 0;
    for (const UsedRoll& used : sheet.plan.layout().rolls)
        count += used.placements.size();
    return count;
}

std::string price(const ComparisonRow& row) {
    const auto price = price_of(row);
    return price ? money(*price, row.sheet->plan.job().film.money_digits, row.sheet->order.currency)
                 : "not known";
}

std::string waste(const Sheet& sheet) {
    const Areas areas = areas_of(sheet.plan);
    return percent(areas.film - areas.wrapped, areas.film);
}

std::vector<std::string> cells(const ComparisonRow& row, const Measures& measures) {
    std::vector<std::string> out{row.film, measures.size_with_unit(row.width)};
    if (!row.sheet) {
        out.insert(out.end(), {"none", "-", "-", "-", "-"});
        return out;
    }
    const Sheet& sheet = *row.sheet;
    out.insert(out.end(),
               {measures.film(length_of(sheet.plan)), measures.film(sheet.order.length()),
                waste(sheet), price(row), std::to_string(sheet.plan.job().seams.size())});
    return out;
}

Table table_of(const Comparison& comparison) {
    const Measures measures(comparison.unit);
    Table table{{{"film", Align::left, true},
                 {"roll width", Align::right},
                 {"needed", Align::right},
                 {"to order", Align::right},
                 {"waste", Align::right},
                 {"price", Align::right},
                 {"seams", Align::right}},
                {}};
    for (const Ranked& r : ranked(comparison))
        table.rows.push_back(cells(*r.row, measures));
    return table;
}

std::vector<std::string> problems(const Comparison& comparison) {
    const Measures measures(comparison.unit);
    std::vector<std::string> out;
    for (const ComparisonRow& row : comparison.rows)
        if (!row.sheet)
            out.push_back(row.film + ", " + measures.size_with_unit(row.width) + ": " +
                          row.problem);
    return out;
}

Document document(const Comparison& comparison) {
    Document out;
    out.push_back(Title{comparison.vehicles, comparison.demonstration
                                                 ? std::string("DEMONSTRATION: INVENTED DATA")
                                                 : ""});
    out.push_back(Line{"Needed is what the layout takes, to order what has to be bought: whole "
                       "lengths as they are sold. Seams count those in the vehicle file and those "
                       "added."});
    out.push_back(Heading{"THE CHEAPEST FIRST"});
    out.push_back(table_of(comparison));
    if (const auto texts = differences(comparison); !texts.empty()) {
        out.push_back(Heading{"WHAT MAKES THE DIFFERENCE"});
        out.push_back(Items{"-", texts});
    }
    for (const auto& texts : {about_the_prices(comparison), problems(comparison)})
        if (!texts.empty())
            out.push_back(Items{"!", texts});
    return out;
}

Json order_of(const ComparisonRow& row) {
    const Order& order = row.sheet->order;
    const auto price = price_of(row);
    const int digits = row.sheet->plan.job().film.money_digits;
    return JsonObject()
        .add("length_mm", json_mm(order.length()))
        .add("total", price ? json_text(to_string(*price, digits)) : json_null)
        .add("currency", json_text_or_null(order.currency))
        .on_one_line();
}

Json row_as_json(const Ranked& ranked) {
    const ComparisonRow& row = *ranked.row;
    JsonObject out;
    out.add("film", json_text(row.film)).add("roll_width_mm", json_mm(row.width));
    if (!row.sheet) {
        for (const char* name :
             {"length_mm", "bound_mm", "waste_percent", "order", "seams", "pieces", "rank", "more"})
            out.add(name, json_null);
        return out.add("problem", json_text(row.problem)).on_one_line();
    }
    const Sheet& sheet = *row.sheet;
    out.add("length_mm", json_mm(length_of(sheet.plan)))
        .add("bound_mm", json_mm(sheet.plan.layout().bound.length))
        .add("waste_percent", json_number(decimal(waste_micropercent(areas_of(sheet.plan)), 6, 4)))
        .add("order", order_of(row))
        .add("seams", json_whole(static_cast<std::int64_t>(sheet.plan.job().seams.size())))
        .add("pieces", json_whole(static_cast<std::int64_t>(pieces_of(sheet))))
        .add("rank", ranked.rank ? json_whole(*ranked.rank) : json_null)
        .add("more", ranked.more
                         ? json_text(to_string(*ranked.more, sheet.plan.job().film.money_digits))
                         : json_null)
        .add("problem", json_null);
    return out.on_one_line();
}

std::string row_as_csv(const Comparison& comparison, const Ranked& ranked) {
    const ComparisonRow& row = *ranked.row;
    std::vector<std::string> fields{csv_text(comparison.vehicles), csv_text(row.film),
                                    decimal(row.width, 3, 0)};
    if (!row.sheet) {
        fields.insert(fields.end(), 8, "");
        fields.insert(fields.end(), {csv_text(row.problem), "", ""});
        return csv_line(fields);
    }
    const Sheet& sheet = *row.sheet;
    const Film& film = sheet.plan.job().film;
    const auto price = price_of(row);
    fields.insert(
        fields.end(),
        {decimal(length_of(sheet.plan), 3, 0), decimal(sheet.plan.layout().bound.length, 3, 0),
         decimal(waste_micropercent(areas_of(sheet.plan)), 6, 4),
         decimal(sheet.order.length().pm(), 9, 0),
         price ? to_string(*price, film.money_digits) : std::string(),
         csv_text(sheet.order.currency), std::to_string(sheet.plan.job().seams.size()),
         std::to_string(pieces_of(sheet)), std::string(),
         ranked.rank ? std::to_string(*ranked.rank) : std::string(),
         ranked.more ? to_string(*ranked.more, film.money_digits) : std::string()});
    return csv_line(fields);
}

} // namespace

std::string to_table(const Comparison& comparison, const TextStyle& style) {
    return to_text(document(comparison), style);
}

std::string to_markdown(const Comparison& comparison) {
    return to_markdown(document(comparison));
}

std::string to_json(const Comparison& comparison) {
    std::vector<Json> rows;
    for (const Ranked& row : ranks(comparison))
        rows.push_back(row_as_json(row));
    return JsonObject()
               .add("schema", json_text("pelt.compare/1"))
               .add("vehicle", json_text(comparison.vehicles))
               .add("demonstration", json_bool(comparison.demonstration))
               .add("rows", json_lines(rows))
               .on_lines()
               .text +
           "\n";
}

std::string to_csv(const Comparison& comparison) {
    std::string text =
        csv_line({"vehicle", "film", "roll_width_mm", "length_mm", "bound_mm", "waste_percent",
                  "order_mm", "total", "currency", "seams", "pieces", "problem", "rank", "more"});
    for (const Ranked& row : ranks(comparison))
        text += row_as_csv(comparison, row);
    return text;
}

} // namespace pelt::report
