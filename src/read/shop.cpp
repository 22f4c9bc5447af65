// SPDX-License-Identifier: MIT
#include "model/shop.hpp"

#include "model/error.hpp"
#include "read/currency.hpp"
#include "read/document.hpp"
#include "read/fields.hpp"
#include "read/read.hpp"
#include "read/suggest.hpp"
#include "read/times.hpp"
#include "trade/names.hpp"

#include <array>
#include <cmath>

namespace pelt::read {
namespace {

const Key& key_of(In in, std::string_view name) {
    const Key* key = find_key(in, name);
    if (key == nullptr)
        throw ProgramError("the table of keys has no '" + std::string(name) + "'");
    return *key;
}

std::optional<Share> share_of(const Fields& fields, std::string_view name) {
    const auto percent = fields.percent(name);
    constexpr double millionths_a_percent = 10'000;
    return percent ? std::optional(Share{std::llround(*percent * millionths_a_percent)})
                   : std::nullopt;
}

std::optional<Money> money_of(const Fields& fields, std::string_view name) {
    const auto written = fields.money(name);
    return written ? std::optional(written->amount) : std::nullopt;
}

void read_from(const Fields& fields, Shop& shop) {
    const auto from = fields.map("from");
    if (!from)
        return;
    shop.from.name = from->text("name").value_or("");
    shop.from.address = from->text("address").value_or("");
    shop.from.phone = from->text("phone").value_or("");
    shop.from.tax_number = from->text("tax number").value_or("");
}

void read_currency(const Fields& fields, Shop& shop, Context& context) {
    const auto currency = fields.text("currency");
    if (!currency)
        return;
    if (usual_decimals(*currency))
        shop.currency = *currency;
    else
        context.fault(fields.entry("currency")->value.place,
                      "currency " + quoted(*currency) + " is not a code of ISO 4217",
                      "write three capitals, such as EUR");
}

void read_tax(const Fields& fields, Shop& shop, Context& context) {
    const Entry* entry = fields.entry("tax");
    if (entry == nullptr ||
        (entry->value.kind == Node::Kind::scalar && entry->value.text == "none"))
        return;
    const std::vector<Node>* items = fields.list("tax");
    if (items == nullptr)
        return;
    constexpr std::array<TaxOn, 3> bases{TaxOn::all, TaxOn::film, TaxOn::labor};
    for (const Node& item : *items) {
        const Fields tax(item, In::tax, "an entry of 'tax'", item.place, context);
        if (!tax.is_map())
            continue;
        shop.taxes.push_back({tax.text("name").value_or(""),
                              share_of(tax, "rate").value_or(Share{}),
                              bases[tax.choice("on").value_or(0)]});
    }
}

void read_day(const Fields& fields, Shop& shop, Context& context) {
    const auto day = fields.map("day");
    if (!day)
        return;
    const std::size_t before = context.mark();
    if (const auto hours = minutes_of(*day, key_of(In::working_day, "hours"), context))
        shop.week.minutes_a_day = static_cast<int>(*hours);
    if (day->has("works")) {
        // The table begins with Monday, the calendar with Sunday.
        shop.week.works.fill(false);
        for (const std::size_t word : words_of(*day, key_of(In::working_day, "works"), context))
            shop.week.works[(word + 1) % shop.week.works.size()] = true;
    }
    shop.week.closed = days_of(*day, key_of(In::working_day, "closed"), context);
    if (!context.told_since(before) && !shop.week.first_from(Day(std::chrono::year(2026) / 1 / 1)))
        context.fault(day->owner(), "the shop is never open",
                      "name the days on which it works under 'works'");
}

void read_prices(const Fields& fields, Shop& shop) {
    const auto prices = fields.map("prices");
    if (!prices)
        return;
    for (const Key* key : keys_of(In::consumables))
        if (const auto price = money_of(*prices, key->name))
            shop.prices.emplace(key->name, *price);
}

void read_money(const Fields& fields, Shop& shop, Context& context) {
    read_currency(fields, shop, context);
    shop.rate = money_of(fields, "rate");
    if (const auto mark_up = fields.map("mark up")) {
        shop.film_mark_up = share_of(*mark_up, "film").value_or(Share{});
        shop.consumables_mark_up = share_of(*mark_up, "consumables").value_or(Share{});
    }
    shop.film_by = fields.choice("film by").value_or(0) == 1 ? FilmBy::order : FilmBy::metre;
    shop.minimum = money_of(fields, "minimum");
    read_tax(fields, shop, context);
    shop.round_to = money_of(fields, "round to");
    read_prices(fields, shop);
}

/// Panels are named as in a vehicle file; what could be several things is asked for.
void read_minutes(const Fields& fields, Shop& shop, Context& context) {
    const Entry* entry = fields.entry("minutes");
    for (const auto& [name, minutes] : durations_of(fields, key_of(In::shop, "minutes"), context)) {
        const trade::Named named = trade::named(name);
        if (named.is) {
            shop.minutes[*named.is] = minutes;
            continue;
        }
        const Entry* row = entry->value.entry(name);
        context.fault(row->place,
                      quoted(name) + (named.could_be.empty() ? " is not a known panel"
                                                             : " could be several things"),
                      named.could_be.empty()
                          ? "write it as in a vehicle file, such as hood or front door"
                          : "write " + listed(named.could_be));
    }
}

Shop read_shop(const Node& root, Context& context) {
    Shop shop;
    shop.place = root.place;
    shop.file = root.place.source->name;
    const Fields fields(root, In::shop, "the file", root.place, context);
    if (!fields.is_map())
        return shop;
    shop.name = fields.text("shop").value_or("");
    shop.demonstration = fields.yes_no("demonstration").value_or(false);
    read_from(fields, shop);
    read_money(fields, shop, context);
    shop.pace = fields.number("pace").value_or(shop.pace);
    shop.crew = fields.count("crew").value_or(shop.crew);
    read_day(fields, shop, context);
    shop.dry_minutes =
        minutes_of(fields, key_of(In::shop, "dry"), context).value_or(shop.dry_minutes);
    shop.rest_minutes = minutes_of(fields, key_of(In::shop, "rest"), context);
    shop.sure_percent = fields.percent("sure");
    shop.valid_days = fields.count("valid").value_or(shop.valid_days);
    shop.terms = fields.text("terms").value_or("");
    read_minutes(fields, shop, context);
    return shop;
}

} // namespace

Reading<Shop> shop(std::shared_ptr<const Source> source) {
    return read_file<Shop>(source, FileKind::shop, read_shop);
}

} // namespace pelt::read
