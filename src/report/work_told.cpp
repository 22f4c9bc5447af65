// SPDX-License-Identifier: MIT
#include "report/work_told.hpp"

#include "report/decimal.hpp"
#include "report/facts.hpp"
#include "report/numbers.hpp"
#include "report/quote_words.hpp"
#include "report/words.hpp"

#include <cmath>
#include <utility>

namespace pelt::report {
namespace {

Json json_money(const std::optional<Money>& money, const Price& price) {
    return money ? json_text(to_string(*money, price.digits)) : json_null;
}

} // namespace

std::vector<std::string> work_in_brief(const Quote& quote) {
    const Days& days = quote.days;
    const std::string working = counted(days.working_days, "working day", "working days");
    return {
        "Hours of one person: " + hours(quote.hours.taken) + " (" + hours(quote.hours.low) +
            " to " + hours(quote.hours.high) + "), an estimate.",
        (days.ready_on ? "Ready on " + to_string(*days.ready_on) + ", after " + working
                       : "Ready after " + working + " (--start gives the day)") +
            ", by the high hours, this job alone with the whole crew" +
            (days.help_minutes > 0 ? "; book help for " + hours(days.help_minutes) + " h." : ".")};
}

std::string guesses_told(const GuessesLearnt& guesses) {
    std::string text =
        "Guesses in your log: " + std::to_string(guesses.all) + "; what was measured came to " +
        decimal(std::llround(guesses.ratio * 100), 2, 2) + " times what was reckoned";
    if (guesses.ranges > 0)
        text += "; " + std::to_string(guesses.within) + " of " + std::to_string(guesses.ranges) +
                " lay within the range, 9 of 10 should";
    return text + ".";
}

std::string tried_text(const Tried& tried) {
    return std::to_string(tried.spoiled) + " of " + std::to_string(tried.laid());
}

std::vector<std::string> pace_by_the_log(const Quote& quote) {
    std::vector<std::string> out;
    if (quote.pace_by_log)
        out.push_back(
            "Pace by your log: " + decimal(std::llround(quote.pace_by_log->pace * 100), 2, 2) +
            " minutes for a minute reckoned, from " +
            counted(quote.pace_by_log->panels, "panel", "panels") + ".");
    return out;
}

std::vector<std::string> redo_by_the_log(const Quote& quote) {
    std::vector<std::string> panels;
    for (const RedoByLog& redo : quote.redo_by_log)
        add_once(panels, redo.panel + " " + rounded_percent(redo.percent) + " % (" +
                             tried_text(redo.tried) + ")");
    if (panels.empty())
        return {};
    return {"Spoiled and cut again, by your log: " + listed(panels) + "."};
}

std::vector<std::string> by_the_log(const Quote& quote) {
    std::vector<std::string> out = pace_by_the_log(quote);
    for (std::string& text : redo_by_the_log(quote))
        out.push_back(std::move(text));
    return out;
}

void add_quote(JsonObject& out, const Quote& quote) {
    const Price& price = quote.price;
    out.add("film_cost", json_money(price.film, price))
        .add("consumables", json_money(price.consumables, price))
        .add("hours", JsonObject()
                          .add("low", json_number(hours(quote.hours.low)))
                          .add("taken", json_number(hours(quote.hours.taken)))
                          .add("high", json_number(hours(quote.hours.high)))
                          .on_one_line())
        .add("labor", json_money(price.labor, price))
        .add("adjustment",
             price.net ? json_text(to_string(price.adjustment, price.digits)) : json_null)
        .add("net", json_money(price.net, price))
        .add("tax", price.net ? json_text(to_string(price.tax, price.digits)) : json_null)
        .add("total", json_money(price.total, price))
        .add("currency", json_text_or_null(price.currency))
        .add("ready_on",
             quote.days.ready_on ? json_text(to_string(*quote.days.ready_on)) : json_null)
        .add("working_days", json_whole(quote.days.working_days));
}

Json json_quote(const Quote& quote) {
    JsonObject out;
    add_quote(out, quote);
    return out.on_one_line();
}

} // namespace pelt::report
