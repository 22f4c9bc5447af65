// SPDX-License-Identifier: MIT
#include "report/quote.hpp"

#include "report/csv_text.hpp"
#include "report/decimal.hpp"
#include "report/json_text.hpp"
#include "report/numbers.hpp"
#include "report/page_head.hpp"
#include "report/quote_words.hpp"
#include "report/work_told.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

std::string amount(const std::optional<Money>& money, const Price& price) {
    return money ? to_string(*money, price.digits) : std::string();
}

Json json_money(const std::optional<Money>& money, const Price& price) {
    return money ? json_text(to_string(*money, price.digits)) : json_null;
}

Json json_texts(const std::vector<std::string>& texts) {
    std::vector<Json> items;
    for (const std::string& text : texts)
        items.push_back(json_text(text));
    return json_array(items);
}

Json json_length(const std::optional<Length>& length) {
    return length ? json_mm(*length) : json_null;
}

Json json_range(const QuoteRange& range, const Price& price) {
    return JsonObject()
        .add("length_mm", JsonObject()
                              .add("low", json_length(range.low))
                              .add("middle", json_length(range.middle))
                              .add("high", json_length(range.high))
                              .on_one_line())
        .add("total", JsonObject()
                          .add("low", json_money(range.low_total, price))
                          .add("high", json_money(range.high_total, price))
                          .on_one_line())
        .on_one_line();
}

std::string joined(const std::vector<std::string>& texts) {
    std::string out;
    for (const std::string& text : texts)
        out += (out.empty() ? "" : " | ") + text;
    return out;
}

std::string with_currency(const std::optional<Money>& money, const Price& price) {
    return money ? report::money(*money, price.digits, price.currency) : "-";
}

std::vector<std::string> cells(const QuoteRow& row, const Measures& measures) {
    if (!row.quote)
        return {row.job, row.vehicle, row.film, "-", "-", "-", "-"};
    const Quote& quote = *row.quote;
    return {row.job,
            row.vehicle,
            row.film,
            row.order ? measures.film(*row.order) : "-",
            hours(quote.hours.taken),
            quote.days.ready_on ? to_string(*quote.days.ready_on)
                                : counted(quote.days.working_days, "day", "days"),
            quote.range ? range_of_money(*quote.range, quote.price)
                        : with_currency(quote.price.total, quote.price)};
}

/// The shop's pace, which all its jobs have.
std::vector<std::string> pace_of_any(const std::vector<QuoteRow>& rows) {
    for (const QuoteRow& row : rows)
        if (row.quote && row.quote->pace_by_log)
            return pace_by_the_log(*row.quote);
    return {};
}

} // namespace

std::string to_json_line(const QuoteRow& row) {
    JsonObject out;
    out.add("schema", json_text("pelt.quote/1"))
        .add("job", json_text(row.job))
        .add("status", json_whole(row.status))
        .add("vehicle", json_text_or_null(row.vehicle))
        .add("film", json_text_or_null(row.film))
        .add("length_mm", json_length(row.length))
        .add("order_mm", json_length(row.order));
    if (row.quote)
        add_quote(out, *row.quote);
    else
        for (const char* name : {"film_cost", "consumables", "hours", "labor", "adjustment", "net",
                                 "tax", "total", "currency", "ready_on", "working_days"})
            out.add(name, json_null);
    const bool guessed = is_guessed(row);
    out.add("guessed", json_bool(guessed)).add("warnings", json_texts(remarks_of(row)));
    if (guessed)
        out.add("range", json_range(*row.quote->range, row.quote->price));
    return out.on_one_line().text + "\n";
}

std::string quote_csv_head() {
    return csv_line({"job",        "status",    "vehicle",     "film",         "length_mm",
                     "order_mm",   "film_cost", "consumables", "hours_low",    "hours_taken",
                     "hours_high", "labor",     "adjustment",  "net",          "tax",
                     "total",      "currency",  "ready_on",    "working_days", "guessed",
                     "warnings"});
}

std::string to_csv_row(const QuoteRow& row) {
    std::vector<std::string> fields{csv_text(row.job),
                                    std::to_string(row.status),
                                    csv_text(row.vehicle),
                                    csv_text(row.film),
                                    row.length ? decimal(row.length->pm(), 9, 0) : "",
                                    row.order ? decimal(row.order->pm(), 9, 0) : ""};
    if (row.quote) {
        const Quote& quote = *row.quote;
        const Price& price = quote.price;
        fields.insert(
            fields.end(),
            {amount(price.film, price), amount(price.consumables, price), hours(quote.hours.low),
             hours(quote.hours.taken), hours(quote.hours.high), amount(price.labor, price),
             price.net ? to_string(price.adjustment, price.digits) : "", amount(price.net, price),
             price.net ? to_string(price.tax, price.digits) : "", amount(price.total, price),
             csv_text(price.currency), quote.days.ready_on ? to_string(*quote.days.ready_on) : "",
             std::to_string(quote.days.working_days)});
    } else {
        fields.insert(fields.end(), 13, "");
    }
    fields.insert(fields.end(), {is_guessed(row) ? "yes" : "no", csv_text(joined(remarks_of(row)))});
    return csv_line(fields);
}

Document quotes_in_a_table(const std::vector<QuoteRow>& rows, Unit unit) {
    const Measures measures(unit);
    Document out;
    const bool invented =
        std::any_of(rows.begin(), rows.end(), [](const QuoteRow& r) { return r.demonstration; });
    out.push_back(Title{counted(static_cast<std::int64_t>(rows.size()), "quote", "quotes"),
                        invented ? invented_data : ""});
    Table table{{{"job", Align::left, true},
                 {"vehicle", Align::left, true},
                 {"film", Align::left, true},
                 {"to order", Align::right},
                 {"hours", Align::right},
                 {"ready", Align::right},
                 {"total", Align::right}},
                {}};
    for (const QuoteRow& row : rows)
        table.rows.push_back(cells(row, measures));
    out.push_back(std::move(table));
    std::vector<std::string> remarks = pace_of_any(rows);
    for (const QuoteRow& row : rows) {
        if (is_guessed(row))
            remarks.push_back(row.job + ": " + not_measured + ", so its total is a range: measure "
                              "the vehicle before you promise a price.");
        // Warnings are for the cut sheet, but for a job that has no quote.
        for (const std::string& text : row.quote ? row.quote->left_out : row.warnings)
            remarks.push_back(row.job + ": " + text);
        if (row.quote)
            for (const std::string& text : redo_by_the_log(*row.quote))
                remarks.push_back(row.job + ": " + text);
        if (row.quote && row.status != 0)
            remarks.push_back(row.job + ": 'pelt cut' says what stands in the way.");
    }
    if (!remarks.empty())
        out.push_back(Items{"-", remarks});
    return out;
}

} // namespace pelt::report
