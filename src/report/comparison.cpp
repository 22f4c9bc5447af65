// SPDX-License-Identifier: MIT
#include "report/csv_text.hpp"
#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/json_parts.hpp"
#include "report/numbers.hpp"
#include "report/page_head.hpp"
#include "report/quote_words.hpp"
#include "report/ranking.hpp"
#include "report/work_told.hpp"

#include <algorithm>
#include <utility>

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
    return price ? money(*price, row.job()->film.money_digits, row.order()->currency)
                 : "not known";
}

/// "13.2 m to 15.4 m".
std::string range(const Estimate& estimate, const Measures& measures) {
    if (!estimate.length.low)
        return "-";
    return measures.film(*estimate.length.low) + " to " +
           (estimate.length.high ? measures.film(*estimate.length.high) : "no roll");
}

std::string seams(const ComparisonRow& row) {
    return std::to_string(row.job()->seams.size());
}

bool is_estimated(const Comparison& comparison) {
    return std::any_of(comparison.rows.begin(), comparison.rows.end(),
                       [](const ComparisonRow& row) { return row.estimate.has_value(); });
}

std::string waste(const Sheet& sheet) {
    const Areas areas = areas_of(sheet.plan);
    return percent(areas.film - areas.wrapped, areas.film);
}

/// Film, hours, the whole job, when it is ready.
std::vector<std::string> cells_of_the_job(const ComparisonRow& row) {
    if (!row.quote)
        return {"-", "-", "-"};
    const Quote& quote = *row.quote;
    const auto whole = whole_job_of(row);
    return {hours(quote.hours.taken),
            quote.days.ready_on ? to_string(*quote.days.ready_on)
                                : counted(quote.days.working_days, "day", "days"),
            whole ? money(*whole, quote.price.digits, quote.price.currency) : "not known"};
}

std::vector<std::string> cells(const ComparisonRow& row, const Measures& measures) {
    std::vector<std::string> out{row.film, measures.size_with_unit(row.width)};
    if (row.estimate) {
        const bool ordered = !row.estimate->order.lines.empty();
        out.insert(out.end(), {range(*row.estimate, measures),
                               ordered ? measures.film(row.estimate->order.length()) : "-", "-",
                               ordered ? price(row) : "-", seams(row)});
        return out;
    }
    if (!row.sheet) {
        out.insert(out.end(), {"none", "-", "-", "-", "-"});
        return out;
    }
    const Sheet& sheet = *row.sheet;
    out.insert(out.end(),
               {measures.film(length_of(sheet.plan)), measures.film(sheet.order.length()),
                waste(sheet), price(row), seams(row)});
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

/// What the whole job costs with each film, in the same order.
Table table_of_jobs(const Comparison& comparison) {
    Table table{{{"film", Align::left, true},
                 {"roll width", Align::right},
                 {"film bought", Align::right},
                 {"hours", Align::right},
                 {"ready", Align::right},
                 {"whole job", Align::right}},
                {}};
    const Measures measures(comparison.unit);
    for (const Ranked& r : ranked(comparison)) {
        std::vector<std::string> row{r.row->film, measures.size_with_unit(r.row->width),
                                     r.row->job() != nullptr ? price(*r.row) : "-"};
        for (std::string& cell : cells_of_the_job(*r.row))
            row.push_back(std::move(cell));
        table.rows.push_back(std::move(row));
    }
    return table;
}

/// What the prices of the whole jobs leave out, and what a log changed; each once.
std::vector<std::string> about_the_jobs(const Comparison& comparison) {
    std::vector<std::string> out;
    for (const ComparisonRow& row : comparison.rows)
        if (row.quote)
            for (const auto& texts : {row.quote->left_out, by_the_log(*row.quote)})
                for (const std::string& text : texts)
                    if (std::find(out.begin(), out.end(), text) == out.end())
                        out.push_back(text);
    return out;
}

std::vector<std::string> problems(const Comparison& comparison) {
    const Measures measures(comparison.unit);
    std::vector<std::string> out;
    for (const ComparisonRow& row : comparison.rows)
        if (row.job() == nullptr)
            out.push_back(row.film + ", " + measures.size_with_unit(row.width) + ": " +
                          row.problem);
    return out;
}

Document document(const Comparison& comparison) {
    const bool estimated = is_estimated(comparison);
    Document out = page_head(comparison.vehicles, estimated, comparison.demonstration);
    if (estimated)
        out.push_back(Line{"Needed is what 9 of 10 such vehicles take, to order what suffices as "
                           "often as is wanted (--sure). Price by it, and measure before you "
                           "buy."});
    else
        out.push_back(Line{"Needed is what the layout takes, to order what has to be bought: whole "
                       "lengths as they are sold. Seams count those in the vehicle file and those "
                       "added."});
    out.push_back(Heading{"THE CHEAPEST FIRST"});
    if (comparison.by_shop) {
        out.push_back(table_of_jobs(comparison));
        out.push_back(Line{"The whole job is what the customer pays, film, consumables, labor and "
                           "tax, by the shop file; film bought is what has to be bought."});
    }
    out.push_back(table_of(comparison));
    if (const auto texts = about_the_jobs(comparison); !texts.empty())
        out.push_back(Items{"-", texts});
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
    const Order& order = *row.order();
    if (order.lines.empty() && row.estimate)
        return json_null;
    const auto price = price_of(row);
    const int digits = row.job()->film.money_digits;
    return JsonObject()
        .add("length_mm", json_mm(order.length()))
        .add("total", price ? json_text(to_string(*price, digits)) : json_null)
        .add("currency", json_text_or_null(order.currency))
        .on_one_line();
}

void add_lengths(JsonObject& out, const ComparisonRow& row) {
    if (!row.sheet) {
        const auto& middle = row.estimate->length.middle;
        out.add("length_mm", middle ? json_mm(*middle) : json_null)
            .add("bound_mm", json_null)
            .add("waste_percent", json_null);
        return;
    }
    const Plan& plan = row.sheet->plan;
    out.add("length_mm", json_mm(length_of(plan)))
        .add("bound_mm", json_mm(plan.layout().bound.length))
        .add("waste_percent", json_number(decimal(waste_micropercent(areas_of(plan)), 6, 4)));
}

Json row_as_json(const Ranked& ranked, bool by_shop) {
    const ComparisonRow& row = *ranked.row;
    JsonObject out;
    out.add("film", json_text(row.film)).add("roll_width_mm", json_mm(row.width));
    if (row.job() == nullptr) {
        for (const char* name :
             {"length_mm", "bound_mm", "waste_percent", "order", "seams", "pieces", "rank", "more"})
            out.add(name, json_null);
        out.add("problem", json_text(row.problem)).add("guess", json_null);
        if (by_shop)
            out.add("job", json_null);
        return out.on_one_line();
    }
    add_lengths(out, row);
    out.add("order", order_of(row))
        .add("seams", json_whole(static_cast<std::int64_t>(row.job()->seams.size())))
        .add("pieces", row.sheet ? json_whole(static_cast<std::int64_t>(pieces_of(*row.sheet)))
                                 : json_null)
        .add("rank", ranked.rank ? json_whole(*ranked.rank) : json_null)
        .add("more", ranked.more
                         ? json_text(to_string(*ranked.more, row.job()->film.money_digits))
                         : json_null)
        .add("problem", json_null)
        .add("guess", row.estimate ? json_guess(*row.estimate) : json_null);
    if (by_shop)
        out.add("job", row.quote ? json_quote(*row.quote) : json_null);
    return out.on_one_line();
}

std::string mm_or_nothing(const std::optional<Um>& length) {
    return length ? decimal(*length, 3, 0) : std::string();
}

/// What it takes, what no layout goes below, waste.
std::vector<std::string> lengths_as_csv(const ComparisonRow& row) {
    if (!row.sheet)
        return {mm_or_nothing(row.estimate->length.middle), "", ""};
    const Plan& plan = row.sheet->plan;
    return {decimal(length_of(plan), 3, 0), decimal(plan.layout().bound.length, 3, 0),
            decimal(waste_micropercent(areas_of(plan)), 6, 4)};
}

std::vector<std::string> guess_as_csv(const ComparisonRow& row) {
    if (!row.estimate)
        return {"", "", ""};
    return {std::to_string(row.estimate->guessed.size()), mm_or_nothing(row.estimate->length.low),
            mm_or_nothing(row.estimate->length.high)};
}

std::vector<std::string> job_as_csv(const ComparisonRow& row) {
    if (!row.quote)
        return {"", "", "", "", "", ""};
    const Quote& quote = *row.quote;
    const auto amount = [&](const std::optional<Money>& money) {
        return money ? to_string(*money, quote.price.digits) : std::string();
    };
    return {amount(quote.price.film),
            hours(quote.hours.taken),
            amount(quote.price.labor),
            amount(whole_job_of(row)),
            quote.days.ready_on ? to_string(*quote.days.ready_on) : "",
            std::to_string(quote.days.working_days)};
}

std::string row_as_csv(const Comparison& comparison, const Ranked& ranked) {
    const ComparisonRow& row = *ranked.row;
    std::vector<std::string> fields{csv_text(comparison.vehicles), csv_text(row.film),
                                    decimal(row.width, 3, 0)};
    if (row.job() == nullptr) {
        fields.insert(fields.end(), 8, "");
        fields.insert(fields.end(), {csv_text(row.problem), "", "", "", "", ""});
        fields.insert(fields.end(), comparison.by_shop ? 6 : 0, "");
        return csv_line(fields);
    }
    const Order& order = *row.order();
    const int digits = row.job()->film.money_digits;
    const auto price = price_of(row);
    for (std::string& figure : lengths_as_csv(row))
        fields.push_back(std::move(figure));
    fields.insert(fields.end(),
                  {order.lines.empty() && row.estimate ? "" : decimal(order.length().pm(), 9, 0),
                   price ? to_string(*price, digits) : std::string(), csv_text(order.currency),
                   seams(row), row.sheet ? std::to_string(pieces_of(*row.sheet)) : "",
                   std::string(), ranked.rank ? std::to_string(*ranked.rank) : std::string(),
                   ranked.more ? to_string(*ranked.more, digits) : std::string()});
    for (std::string& figure : guess_as_csv(row))
        fields.push_back(std::move(figure));
    if (comparison.by_shop)
        for (std::string& figure : job_as_csv(row))
            fields.push_back(std::move(figure));
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
        rows.push_back(row_as_json(row, comparison.by_shop));
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
    std::vector<std::string> head{
        "vehicle",  "film",  "roll_width_mm",  "length_mm", "bound_mm", "waste_percent",
        "order_mm", "total", "currency",       "seams",     "pieces",   "problem",
        "rank",     "more",  "guessed_panels", "low_mm",    "high_mm"};
    if (comparison.by_shop)
        head.insert(head.end(),
                    {"film_cost", "hours_taken", "labor", "whole_job", "ready_on", "working_days"});
    std::string text = csv_line(head);
    for (const Ranked& row : ranks(comparison))
        text += row_as_csv(comparison, row);
    return text;
}

} // namespace pelt::report
