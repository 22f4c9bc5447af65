// SPDX-License-Identifier: MIT
#include "report/strip.hpp"

#include "report/cautions.hpp"
#include "report/csv_text.hpp"
#include "report/decimal.hpp"
#include "report/json_text.hpp"
#include "report/numbers.hpp"
#include "report/page_head.hpp"
#include "report/words.hpp"
#include "trade/consumables.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::report {
namespace {

struct Total {
    double minutes = 0;
    std::vector<std::string> without_minutes;
    std::int64_t clips = 0;
};

Total total_of(const StripList& list) {
    Total total;
    for (const PartOff& row : list.off) {
        const Hardware& part = row.part;
        if (part.minutes_each)
            total.minutes += part.count * *part.minutes_each;
        else
            total.without_minutes.push_back(part.name);
        total.clips += std::int64_t{part.count} * part.clips_each;
    }
    return total;
}

/// "45 min", "2 h", "2 h 10 min"; rounded up to whole minutes.
std::string duration(double minutes) {
    const auto whole = static_cast<std::int64_t>(std::ceil(minutes - 1e-9));
    const std::string rest = std::to_string(whole % 60) + " min";
    if (whole < 60)
        return rest;
    return std::to_string(whole / 60) + " h" + (whole % 60 == 0 ? "" : " " + rest);
}

std::string minutes_text(const Hardware& part) {
    return part.minutes_each ? decimal(thousandths(*part.minutes_each * part.count), 3, 0) : "-";
}

Table parts_table(const StripSheet& sheet) {
    Table table;
    table.columns = {{"done", Align::left, false},   {"step", Align::right, false},
                     {"part", Align::left, true},    {"count", Align::right, false},
                     {"tool", Align::left, true},    {"min", Align::right, false},
                     {"clips", Align::right, false}, {"panels", Align::left, true}};
    int step = 0;
    for (const PartOff& row : sheet.list.off) {
        const Hardware& part = row.part;
        table.rows.push_back({"[  ]", std::to_string(++step), part.name, std::to_string(part.count),
                              part.tool.empty() ? "-" : part.tool, minutes_text(part),
                              std::to_string(std::int64_t{part.count} * part.clips_each),
                              row.panels.empty() ? "-" : listed(row.panels)});
    }
    return table;
}

std::vector<std::string> waits(const StripList& list) {
    std::vector<std::string> out;
    for (const PartOff& row : list.off)
        if (!row.part.after.empty())
            out.push_back(row.part.name + " after " + listed(row.part.after));
    return out;
}

std::vector<std::string> times(const StripSheet& sheet) {
    const Total total = total_of(sheet.list);
    std::vector<std::string> out;
    const double pace = sheet.shop ? sheet.shop->pace : 1;
    const double minutes = total.minutes * pace;
    if (total.minutes > 0)
        out.push_back("Taking off: " + duration(minutes) + " by the file's minutes" +
                      (pace == 1
                           ? ""
                           : ", at the shop's pace of " + decimal(std::llround(pace * 100), 2, 2)) +
                      ". Putting back: about " + duration(minutes * trade::refit_share) +
                      " (an estimate: five sixths of it).");
    if (!total.without_minutes.empty())
        out.push_back("Without minutes in the file, so not in the time: " +
                      listed(total.without_minutes) + ".");
    return out;
}

std::vector<std::string> tools_of(const StripList& list) {
    std::vector<std::string> tools;
    for (const PartOff& row : list.off)
        if (!row.part.tool.empty() &&
            std::find(tools.begin(), tools.end(), row.part.tool) == tools.end())
            tools.push_back(row.part.tool);
    return tools;
}

/// " l", " pairs", " roll" of one.
std::string unit_of(const ConsumableNeed& need, std::int64_t amount) {
    constexpr std::int64_t one = 1'000;
    if (need.unit.empty())
        return "";
    const bool plural = need.unit == "rolls" || need.unit == "pairs";
    return " " + (plural && amount == one ? need.unit.substr(0, need.unit.size() - 1) : need.unit);
}

/// "blade tips 2 to 4, clips 1"
std::string used_up(const StripList& list) {
    std::string text;
    for (const ConsumableNeed& need : list.used_up) {
        const std::string low = decimal(need.low, 3, 0);
        const std::string high = decimal(need.high, 3, 0);
        text += (text.empty() ? "" : ", ") + need.name + " " + (low == high ? "" : low + " to ") +
                high + unit_of(need, need.high);
    }
    return text;
}

/// What these cost, by the shop's prices.
std::vector<std::string> cost_of_used_up(const StripSheet& sheet) {
    if (!sheet.shop)
        return {};
    Money sum;
    std::string costs;
    std::vector<std::string> without;
    for (const ConsumableNeed& need : sheet.list.used_up)
        if (need.cost) {
            sum = sum + *need.cost;
            costs += (costs.empty() ? "" : ", ") + need.name + " " +
                     to_string(*need.cost, sheet.money_digits) + " for " +
                     decimal(need.taken, 3, 0) + unit_of(need, need.taken);
        } else {
            without.push_back(need.name);
        }
    std::vector<std::string> out;
    if (!costs.empty())
        out.push_back(
            "At the shop's prices: " + money(sum, sheet.money_digits, sheet.shop->currency) +
            ", of it " + costs + ".");
    if (!without.empty())
        out.push_back("Without a price in the shop file: " + listed(without) + ".");
    return out;
}

/// Openings that film runs over while their parts are off.
std::vector<std::string> covered(const StripList& list) {
    if (list.covered.empty())
        return {};
    std::string text;
    for (const CoveredOf& of : list.covered)
        text += (text.empty() ? "" : "; ") + of.panel + " (" + listed(of.openings) + ")";
    return {"Covered, and cut open when the part goes back: " + text + "."};
}

/// What these parts and panels call for.
std::vector<std::string> ready_for_this(const StripSheet& sheet, const Measures& measures) {
    const StripList& list = sheet.list;
    std::vector<std::string> out;
    const std::vector<std::string> tools = tools_of(list);
    if (!tools.empty())
        out.push_back("Tools: " + listed(tools) + ".");
    const std::int64_t clips = total_of(list).clips;
    if (clips > 0)
        out.push_back("Clips that come off: " + std::to_string(clips) +
                      "; new ones are of their kinds, since one or two of ten break.");
    out.push_back("Used up by these panels and parts: " + used_up(list) + ".");
    for (const std::string& text : cost_of_used_up(sheet))
        out.push_back(text);
    if (!sheet.film)
        out.push_back("Edge tape and primer hang on the film: name it behind the vehicle.");
    const auto edge = static_cast<Um>(std::ceil(list.edge_mm)) * um_per_mm;
    out.push_back("Film edge to press down and warm again: " + measures.film(edge) +
                  " round all panels, which takes " +
                  duration(trade::minutes_a_metre_of_edge.least * list.edge_mm / 1000) + " to " +
                  duration(trade::minutes_a_metre_of_edge.most * list.edge_mm / 1000) +
                  " (one to two minutes a meter).");
    return out;
}

std::vector<std::string> not_off(const StripList& list) {
    std::vector<std::string> out;
    if (!list.stay.empty())
        out.push_back("Stay on: " + listed(list.stay) + ".");
    if (!list.not_needed.empty())
        out.push_back("Not in the way of these panels: " + listed(list.not_needed) + ".");
    return out;
}

void add_items(Document& out, const std::string& mark, const std::vector<std::string>& texts) {
    if (!texts.empty())
        out.push_back(Items{mark, texts});
}

Json json_names(const std::vector<std::string>& names) {
    std::vector<Json> items;
    for (const std::string& name : names)
        items.push_back(json_text(name));
    return json_array(items);
}

Json json_or_null(const std::optional<double>& value) {
    return value ? json_number(decimal(thousandths(*value), 3, 1)) : json_null;
}

Json json_part(const PartOff& row) {
    return JsonObject()
        .add("part", json_text(row.part.name))
        .add("count", json_whole(row.part.count))
        .add("tool", json_text_or_null(row.part.tool))
        .add("minutes_each", json_or_null(row.part.minutes_each))
        .add("clips_each", json_whole(row.part.clips_each))
        .add("after", json_names(row.part.after))
        .add("panels", json_names(row.panels))
        .on_one_line();
}

Json json_total(const StripList& list) {
    const Total total = total_of(list);
    return JsonObject()
        .add("minutes", json_or_null(total.minutes))
        .add("parts_without_minutes", json_names(total.without_minutes))
        .add("clips", json_whole(total.clips))
        .add("pieces", json_whole(list.pieces))
        .add("edge_mm", json_or_null(list.edge_mm))
        .on_one_line();
}

Json json_used_up(const StripSheet& sheet) {
    std::vector<Json> items;
    for (const ConsumableNeed& need : sheet.list.used_up) {
        JsonObject item;
        item.add("name", json_text(need.name))
            .add("unit", json_text_or_null(need.unit))
            .add("low", json_number(decimal(need.low, 3, 0)))
            .add("high", json_number(decimal(need.high, 3, 0)));
        if (sheet.shop)
            item.add("taken", json_number(decimal(need.taken, 3, 0)))
                .add("cost",
                     need.cost ? json_text(to_string(*need.cost, sheet.money_digits)) : json_null);
        items.push_back(item.on_one_line());
    }
    return json_lines(items);
}

std::string in_one_field(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : "; ") + name;
    return csv_text(text);
}

} // namespace

Document strip_report(const StripSheet& sheet) {
    const Measures measures(sheet.unit);
    const bool guessed = !sheet.like.empty();
    Document out = page_head(sheet.vehicle, guessed, sheet.demonstration);
    if (guessed)
        out.push_back(Line{"The parts are those of " + sheet.like +
                           ", which this vehicle is like: look what it has before you begin."});
    if (sheet.film)
        out.push_back(Line{"Film: " + sheet.film->name});
    out.push_back(Heading{"PARTS TO TAKE OFF, IN THIS ORDER"});
    if (sheet.list.off.empty())
        out.push_back(Line{"None: the vehicle file names none that these panels call for."});
    else {
        out.push_back(parts_table(sheet));
        out.push_back(Line{
            "Count, minutes and clips are of all pieces of a part that these panels call for."});
    }
    add_items(out, "-", waits(sheet.list));
    add_items(out, "-", not_off(sheet.list));
    add_items(out, "-", covered(sheet.list));
    add_items(out, "-", times(sheet));
    out.push_back(Heading{"TO HAVE READY"});
    add_items(out, "-", ready_for_this(sheet, measures));
    out.push_back(Line{sheet.shop ? "Common practice throughout, but for what the vehicle file and "
                                    "the shop file say."
                                  : "Common practice throughout, but for what the vehicle file "
                                    "says."});
    out.push_back(Heading{"CAUTIONS"});
    out.push_back(Items{"-", cautions_of_taking_off(sheet)});
    return out;
}

std::string to_json(const StripSheet& sheet) {
    std::vector<Json> parts;
    for (const PartOff& row : sheet.list.off)
        parts.push_back(json_part(row));
    return JsonObject()
               .add("schema", json_text("pelt.strip/1"))
               .add("vehicle", json_text(sheet.vehicle))
               .add("film", sheet.film ? json_text(sheet.film->name) : json_null)
               .add("demonstration", json_bool(sheet.demonstration))
               .add("parts", json_lines(parts))
               .add("stay", json_names(sheet.list.stay))
               .add("not_needed", json_names(sheet.list.not_needed))
               .add("used_up", json_used_up(sheet))
               .add("total", json_total(sheet.list))
               .add("guessed", json_bool(!sheet.like.empty()))
               .on_lines()
               .text +
           "\n";
}

std::string to_csv(const StripSheet& sheet) {
    std::string text = csv_line(
        {"step", "part", "count", "tool", "minutes_each", "clips_each", "after", "panels",
                  "guessed"});
    const auto number = [](const std::optional<double>& value) {
        return value ? decimal(thousandths(*value), 3, 0) : "";
    };
    int step = 0;
    for (const PartOff& row : sheet.list.off)
        text += csv_line({std::to_string(++step), csv_text(row.part.name),
                          std::to_string(row.part.count), csv_text(row.part.tool),
                          number(row.part.minutes_each), std::to_string(row.part.clips_each),
                          in_one_field(row.part.after), in_one_field(row.panels),
                          sheet.like.empty() ? "no" : "yes"});
    return text;
}

std::string to_table(const StripSheet& sheet, const TextStyle& style) {
    return to_text(strip_report(sheet), style);
}

std::string to_markdown(const StripSheet& sheet) {
    return to_markdown(strip_report(sheet));
}

} // namespace pelt::report
