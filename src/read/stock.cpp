// SPDX-License-Identifier: MIT
#include "model/stock.hpp"

#include "read/document.hpp"
#include "read/fields.hpp"
#include "read/quantities.hpp"
#include "read/read.hpp"

#include <map>

namespace pelt::read {
namespace {

std::optional<Um> floor_um(const Fields& fields, std::string_view key) {
    const auto written = fields.length(key);
    return written ? std::optional(written->length.floor_um()) : std::nullopt;
}

void must_rise(const Fields& fields, std::string_view first, std::string_view second,
               std::optional<Um> low, std::optional<Um> high, Context& context) {
    if (low && high && *high <= *low)
        context.fault(fields.entry(second)->value.place,
                      "a flaw ends at " + quoted(fields.entry(second)->value.text) +
                          ", where it begins or before",
                      "give '" + std::string(second) + "' more than '" + std::string(first) + "'");
}

/// Outwards to the grid.
std::optional<Flaw> read_flaw(const Node& item, const StockRoll& roll, Context& context) {
    const Fields fields(item, In::flaw, "an entry of 'flaws'", item.place, context);
    const auto from = floor_um(fields, "from");
    const auto to = fields.ceil_um("to");
    const auto low = floor_um(fields, "low");
    const auto high = fields.ceil_um("high");
    must_rise(fields, "from", "to", from, to, context);
    must_rise(fields, "low", "high", low, high, context);
    if (from && roll.length > 0 && *from >= roll.length)
        context.fault(fields.entry("from")->value.place,
                      "a flaw begins at " + quoted(fields.entry("from")->value.text) +
                          ", beyond the roll",
                      "places count from the free end; leave it out if it has been cut off");
    if (low && roll.width && *low >= *roll.width)
        context.fault(fields.entry("low")->value.place,
                      "a flaw begins at " + quoted(fields.entry("low")->value.text) +
                          " across the roll, beyond its width",
                      "places across count from the near edge");
    if (!from || !to)
        return std::nullopt;
    return Flaw{*from, *to, low, high};
}

void read_cost(const Fields& fields, StockRoll& roll) {
    const Entry* entry = fields.entry("cost");
    if (entry == nullptr)
        return;
    if (entry->value.kind != Node::Kind::map) {
        if (const auto price = fields.money("cost"))
            roll.cost.price = price->amount;
        return;
    }
    const auto map = fields.map("cost");
    if (!map)
        return;
    const auto by = map->length("by");
    const auto price = map->money("price");
    if (by && price)
        roll.cost = {by->length, price->amount};
}

StockRoll read_roll(const Node& item, Context& context) {
    StockRoll roll;
    roll.place = item.place;
    const Fields fields(item, In::stock_roll, "a roll of 'stock'", item.place, context);
    if (!fields.is_map())
        return roll;
    roll.name = fields.name("name").value_or("");
    roll.film = fields.text("film").value_or("");
    roll.width = floor_um(fields, "width");
    roll.length = floor_um(fields, "length").value_or(0);
    roll.trim = fields.ceil_um("trim");
    roll.batch = fields.text("batch").value_or("");
    read_cost(fields, roll);
    roll.arrow_known = fields.choice("arrow").value_or(0) == 0;
    if (roll.width && roll.trim && *roll.width - 2 * *roll.trim < um_per_mm)
        context.fault(fields.entry("trim")->value.place,
                      "trim on both edges leaves nothing of the roll's width",
                      "give what is not used along one edge");
    if (const std::vector<Node>* flaws = fields.has("flaws") ? fields.list("flaws") : nullptr)
        for (const Node& flaw : *flaws)
            if (auto read = read_flaw(flaw, roll, context))
                roll.flaws.push_back(*std::move(read));
    return roll;
}

void check_names(const Stock& stock, Context& context) {
    std::map<std::string, const StockRoll*> first;
    for (const StockRoll& roll : stock.rolls)
        if (!roll.name.empty() && !first.emplace(roll.name, &roll).second)
            context.fault(roll.place, "two rolls are called " + quoted(roll.name),
                          "the other is in line " +
                              std::to_string(first.at(roll.name)->place.line) +
                              "; give one of them another name");
}

Stock read_stock(const Node& root, Context& context) {
    Stock stock;
    stock.place = root.place;
    stock.file = root.place.source->name;
    const Fields fields(root, In::stock, "the file", root.place, context);
    if (!fields.is_map())
        return stock;
    if (const auto unit = fields.choice("units"))
        context.unit = unit_of_choice(*unit);
    stock.demonstration = fields.yes_no("demonstration").value_or(false);
    if (const std::vector<Node>* rolls = fields.list("stock"))
        for (const Node& item : *rolls)
            stock.rolls.push_back(read_roll(item, context));
    check_names(stock, context);
    return stock;
}

} // namespace

Reading<Stock> stock(std::shared_ptr<const Source> source) {
    return read_file<Stock>(source, FileKind::stock, read_stock);
}

} // namespace pelt::read
