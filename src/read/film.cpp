// SPDX-License-Identifier: MIT
#include "read/currency.hpp"
#include "read/document.hpp"
#include "read/fields.hpp"
#include "read/panel.hpp"
#include "read/quantities.hpp"
#include "read/read.hpp"
#include "trade/rolls.hpp"

#include <algorithm>
#include <array>

namespace pelt::read {
namespace {

constexpr Um eighth_of_an_inch = 3'175;

bool is_inches(Unit unit) {
    return unit == Unit::in || unit == Unit::ft || unit == Unit::yd;
}

void read_head(const Fields& fields, Film& film, Context& context) {
    constexpr std::array<FilmKind, 4> kinds{FilmKind::cast, FilmKind::hybrid, FilmKind::calendered,
                                            FilmKind::polyurethane};
    constexpr std::array<HoldsMetal, 3> metal{HoldsMetal::yes, HoldsMetal::no, HoldsMetal::unknown};
    if (const auto unit = fields.choice("units"))
        context.unit = unit_of_choice(*unit);
    film.name = fields.text("film").value_or("");
    film.demonstration = fields.yes_no("demonstration").value_or(false);
    if (const auto chosen = fields.choice("kind"))
        film.kind = kinds[*chosen];
    if (const auto chosen = fields.choice("holds metal"))
        film.holds_metal = metal[*chosen];
    film.direction = read_direction(fields).value_or(Direction::one_way);
}

/// Widths and lengths of a roll round down, its trim up: never more film than there is.
void read_roll(const Fields& fields, Film& film, Context& context) {
    const auto roll = fields.map("roll");
    if (!roll)
        return;
    const auto width = roll->length("width");
    const auto trim = roll->ceil_um("trim");
    const auto length = roll->length("length");
    if (length)
        film.roll_length = length->length.floor_um();
    film.trim = trim.value_or(0);
    if (!width)
        return;
    film.width = width->length.floor_um();
    // Whoever measures in inches has film by the foot or the yard: sizes are in inches there too.
    film.tape_unit =
        is_inches(width->unit) && length && is_inches(length->unit) ? length->unit : width->unit;
    film.allowances.ruler = is_inches(width->unit) ? eighth_of_an_inch : um_per_mm;
    if (film.usable_width() < um_per_mm)
        context.fault(roll->entry("trim")->value.place,
                      "trim on both edges leaves nothing of the roll's width",
                      "give what is not used along one edge");
}

void read_stretch(const Fields& fields, Film& film) {
    const Entry* entry = fields.entry("stretch");
    if (entry == nullptr)
        return;
    if (entry->value.kind != Node::Kind::map) {
        film.stretch_edge_percent = fields.percent("stretch");
        film.stretch_panel_percent = film.stretch_edge_percent;
        return;
    }
    const auto map = fields.map("stretch");
    film.stretch_edge_percent = map->percent("edge");
    film.stretch_panel_percent = map->percent("panel");
}

void read_ruler(const Fields& allowances, Film& film, Context& context) {
    const auto ruler = allowances.length("ruler");
    if (!ruler)
        return;
    film.allowances.ruler = ruler->length.ceil_um();
    if (film.allowances.ruler != ruler->length.floor_um())
        context.fault(allowances.entry("ruler")->value.place,
                      "ruler " + quoted(allowances.entry("ruler")->value.text) +
                          " is not a whole number of micrometers, on which pieces are placed",
                      "write 1/8 in, or whole millimeters");
}

void read_allowances(const Fields& fields, Film& film, Context& context) {
    const auto map = fields.map("allowances");
    if (!map)
        return;
    Allowances& a = film.allowances;
    a.wrap = map->ceil_um("tuck");
    a.bleed = map->ceil_um("bleed").value_or(0);
    a.handling = read_handling(*map, context).value_or(Handling{});
    a.overlap = map->ceil_um("overlap").value_or(0);
    a.gap = map->ceil_um("spacing").value_or(0);
    a.flush = map->ceil_um("flush").value_or(0);
    read_ruler(*map, film, context);
}

void read_currency(const Fields& fields, Film& film, Context& context) {
    const auto currency = fields.text("currency");
    if (!currency)
        return;
    const auto decimals = usual_decimals(*currency);
    if (!decimals) {
        context.fault(fields.entry("currency")->value.place,
                      "currency " + quoted(*currency) + " is not a code of ISO 4217",
                      "write three capitals, such as EUR");
        return;
    }
    film.currency = *currency;
    film.money_digits = *decimals;
}

std::optional<Length> length_of(const Fields& offer, std::string_view key) {
    const auto written = offer.length(key);
    return written ? std::optional(written->length) : std::nullopt;
}

/// An offer that no order can ever be made of is a slip.
void check_what_is_sold(const Fields& offer, const Film& film, const Offer& made,
                        Context& context) {
    if (made.up_to && *made.up_to < made.by)
        context.fault(offer.entry("up to")->value.place,
                      "up to " + quoted(offer.entry("up to")->value.text) +
                          " is less than one length that is sold",
                      "give 'up to' at least the length of 'by'");
    if (made.from && made.up_to && *made.from > *made.up_to)
        context.fault(offer.entry("from")->value.place,
                      "from " + quoted(offer.entry("from")->value.text) + " is more than 'up to'",
                      "give 'from' the shortest length that is sold, 'up to' the longest");
    if (made.from && film.roll_length && *made.from > Length::from_um(*film.roll_length))
        context.fault(offer.entry("from")->value.place,
                      "from " + quoted(offer.entry("from")->value.text) +
                          " is longer than the roll",
                      "an order is one uncut length; give a longer 'length' under 'roll', or a "
                      "shorter one here");
}

/// Without a currency prices print with as many decimals as they were written with.
void read_sold(const Fields& fields, Film& film, Context& context) {
    const std::vector<Node>* items = fields.list("sold");
    if (items == nullptr)
        return;
    int most_decimals = 0;
    for (const Node& item : *items) {
        const Fields offer(item, In::offer, "an entry of 'sold'", item.place, context);
        const auto by = offer.length("by");
        const auto price = offer.money("price");
        if (!by || !price)
            continue;
        film.sold.push_back(
            {by->length, price->amount, length_of(offer, "from"), length_of(offer, "up to")});
        check_what_is_sold(offer, film, film.sold.back(), context);
        most_decimals = std::max(most_decimals, price->decimals);
        if (film.roll_length && by->length > Length::from_um(*film.roll_length))
            context.fault(offer.entry("by")->value.place,
                          "by " + quoted(offer.entry("by")->value.text) +
                              " is longer than the roll",
                          "an order is one uncut length; give a longer 'length' under 'roll', or a "
                          "shorter one here");
    }
    if (film.currency.empty())
        film.money_digits = most_decimals;
}

void read_worth_keeping(const Fields& fields, Film& film) {
    film.worth_keeping = trade::worth_keeping;
    const auto map = fields.map("worth keeping");
    if (!map)
        return;
    film.worth_keeping.along = map->ceil_um("length").value_or(film.worth_keeping.along);
    film.worth_keeping.across = map->ceil_um("width").value_or(film.worth_keeping.across);
}

Film read_film(const Node& root, Context& context) {
    Film film;
    film.place = root.place;
    film.file = root.place.source->name;
    const Fields fields(root, In::film, "the file", root.place, context);
    if (!fields.is_map())
        return film;
    read_head(fields, film, context);
    read_roll(fields, film, context);
    read_stretch(fields, film);
    read_allowances(fields, film, context);
    read_currency(fields, film, context);
    read_sold(fields, film, context);
    read_worth_keeping(fields, film);
    film.least_piece = fields.ceil_um("least piece").value_or(trade::least_piece);
    return film;
}

} // namespace

Reading<Film> film(std::shared_ptr<const Source> source) {
    return read_file<Film>(source, FileKind::film, read_film);
}

} // namespace pelt::read
