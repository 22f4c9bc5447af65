// SPDX-License-Identifier: MIT
#include "report/decimal.hpp"
#include "report/numbers.hpp"
#include "report/page_head.hpp"
#include "report/quote_words.hpp"

#include <utility>

namespace pelt::report {
namespace {

Table hours_table(const std::vector<std::pair<std::string, Minutes>>& rows,
                  const std::string& head) {
    Table table{{{head, Align::left, true},
                 {"low", Align::right},
                 {"taken", Align::right},
                 {"high", Align::right}},
                {}};
    for (const auto& [name, minutes] : rows)
        table.rows.push_back({name, hours(minutes.low), hours(minutes.taken), hours(minutes.high)});
    return table;
}

std::string from(TimeFrom from) {
    switch (from) {
    case TimeFrom::shop:
        return "the shop's minutes";
    case TimeFrom::table:
        return "usual minutes";
    case TimeFrom::shape:
        return "area and edges";
    }
    return "";
}

/// "1.2 l", "7".
std::string quantity(std::int64_t thousandths, const std::string& unit) {
    return decimal(thousandths, 3, 0) + (unit.empty() ? "" : " " + unit);
}

Table consumables_table(const Quote& quote) {
    Table table{{{"have ready", Align::left, true},
                 {"from", Align::right},
                 {"taken", Align::right},
                 {"to", Align::right},
                 {"cost", Align::right}},
                {}};
    for (const ConsumableNeed& need : quote.consumables)
        table.rows.push_back({need.name, quantity(need.low, need.unit),
                              quantity(need.taken, need.unit), quantity(need.high, need.unit),
                              need.cost ? to_string(*need.cost, quote.price.digits) : "-"});
    return table;
}

Table price_table(const Price& price) {
    Table table{{{"price", Align::left, true}, {price.currency, Align::right}}, {}};
    const auto line = [&](const std::string& name, const std::optional<Money>& money) {
        if (money)
            table.rows.push_back({name, to_string(*money, price.digits)});
    };
    line("film", price.film);
    line("consumables", price.consumables);
    line("labor", price.labor);
    if (price.adjustment != Money{})
        line("to the minimum, and rounding", price.adjustment);
    line("net", price.net);
    for (const TaxLine& tax : price.taxes)
        line(tax.name, tax.amount);
    line("total", price.total);
    return table;
}

std::vector<std::string> days_of(const Days& days) {
    std::vector<std::string> out;
    for (const DayOfWork& day : days.days) {
        std::string text = day.date ? to_string(*day.date) : "Day " + std::to_string(day.number);
        std::string work;
        for (const Stage stage : day.work)
            work += (work.empty() ? "" : ", ") + std::string(name_of(stage));
        out.push_back(text + ": " + (work.empty() ? "film and glue rest" : work) +
                      (day.with_help ? "; a second person is needed" : "") + ".");
    }
    if (days.help_minutes > 0)
        out.push_back("Book help for " + hours(days.help_minutes) +
                      " h: large panels are laid by two people, in one block.");
    if (days.ready_on)
        out.push_back("Ready on " + to_string(*days.ready_on) +
                      (days.look_over ? "; look-over of the edges on " + to_string(*days.look_over)
                                      : std::string()) +
                      ".");
    out.push_back("The days come from the high hours, this job alone with the whole crew: " +
                  hours(days.end_minutes) + " working hours; no plan ends before " +
                  hours(days.bound_minutes) + ".");
    return out;
}

} // namespace

Document inside_page(const QuoteRow& row, Unit unit) {
    const Measures measures(unit);
    Document out = page_head(row.job + " · " + row.vehicle + " · " + row.film, is_guessed(row),
                             row.demonstration);
    if (!row.quote) {
        out.push_back(Items{"!", remarks_of(row)});
        return out;
    }
    const Quote& quote = *row.quote;
    out.push_back(Line{"To order: " + (row.order ? measures.film(*row.order) : "-") +
                       ". Taken off "
                       "the rolls: " +
                       (row.length ? measures.film(*row.length) : "-") + "."});
    if (quote.range)
        out.push_back(Line{"To pay: " + range_of_money(*quote.range, quote.price) +
                           "; below for the length to price by."});
    out.push_back(price_table(quote.price));
    if (const std::vector<std::string> remarks = remarks_of(row); !remarks.empty())
        out.push_back(Items{"-", remarks});
    out.push_back(Heading{"THE DAYS"});
    out.push_back(Items{"-", days_of(quote.days)});
    std::vector<std::pair<std::string, Minutes>> stages;
    for (const StageTime& stage : quote.stages)
        stages.emplace_back(name_of(stage.stage), stage.minutes);
    stages.emplace_back("in all", quote.hours);
    out.push_back(Heading{"HOURS OF ONE PERSON (AN ESTIMATE FROM COMMON PRACTICE)"});
    out.push_back(hours_table(stages, "stage"));
    std::vector<std::pair<std::string, Minutes>> panels;
    for (const PanelTime& panel : quote.panels)
        panels.emplace_back(panel.panel + " (" + from(panel.from) + ")", panel.minutes);
    out.push_back(hours_table(panels, "panel"));
    out.push_back(consumables_table(quote));
    return out;
}

} // namespace pelt::report
