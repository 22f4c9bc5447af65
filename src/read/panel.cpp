// SPDX-License-Identifier: MIT
#include "read/panel.hpp"

#include "read/edges.hpp"
#include "read/outline.hpp"
#include "read/panel_name.hpp"
#include "read/quantities.hpp"
#include "read/shapes.hpp"
#include "read/surface.hpp"
#include "trade/forward.hpp"
#include "trade/rolls.hpp"

#include <algorithm>
#include <array>

namespace pelt::read {
namespace {

constexpr std::array<std::string_view, 4> forms{"outline", "size", "girths", "surface"};

/// Exactly one of the ways to describe a panel.
void check_one_form(const Fields& fields, Context& context) {
    std::vector<std::string_view> given;
    for (const std::string_view form : forms)
        if (fields.has(form))
            given.push_back(form);
    const bool meant = std::any_of(forms.begin(), forms.end(),
                                   [&](std::string_view form) { return fields.mentions(form); });
    if (!meant)
        context.fault(fields.owner(), "it has no shape",
                      "give 'outline', 'size', 'girths' or 'surface'");
    if (given.size() > 1)
        context.fault(fields.entry(given[1])->place,
                      "it has both '" + std::string(given[0]) + "' and '" + std::string(given[1]) +
                          "'",
                      "keep the one that was measured");
}

void read_station(const Node& item, GirthsForm& form, Context& context) {
    const std::string label = "station " + std::to_string(form.stations.size() + 1);
    const Fields fields(item, In::station, label, item.place, context);
    GirthStation station;
    station.place = item.place;
    const auto at = fields.mm("at");
    const auto up = fields.mm("up");
    const auto down = fields.mm("down");
    if (at && up && down) {
        station.at_mm = *at;
        station.up_mm = *up;
        station.down_mm = *down;
        if (*up + *down < 1)
            context.fault(item.place, label + " reaches less than 1 mm from edge to edge",
                          "give 'up' and 'down' of at least 1 mm together");
        if (!form.stations.empty() && *at - form.stations.back().at_mm < 1)
            context.fault(item.place, label + " is not beyond the one before it",
                          "list stations by rising 'at', 1 mm apart at least");
    }
    form.stations.push_back(station);
}

std::optional<GirthsForm> read_girths(const Fields& fields, Context& context) {
    const std::vector<Node>* items = fields.list("girths");
    if (items == nullptr)
        return std::nullopt;
    const std::size_t mark = context.mark();
    GirthsForm form;
    form.smooth = fields.choice("through stations") == std::size_t{1};
    for (const Node& item : *items)
        read_station(item, form, context);
    if (form.stations.size() < 2)
        context.fault(fields.entry("girths")->place, "'girths' has one station",
                      "give two at least, at both ends of the panel");
    return context.told_since(mark) ? std::nullopt : std::optional(std::move(form));
}

void read_form(const Fields& fields, Panel& panel, Context& context) {
    check_one_form(fields, context);
    if (const Entry* outline = fields.entry("outline")) {
        if (auto form = read_outline(*outline, *find_key(In::panel, "outline"), context))
            panel.form = std::move(*form);
    } else if (fields.has("size")) {
        if (const auto size = fields.point("size"))
            panel.form = rectangle_form(*size, fields.entry("size")->value.place);
    } else if (fields.has("girths")) {
        panel.form = read_girths(fields, context).value_or(GirthsForm{});
    } else if (fields.has("surface")) {
        panel.form = SurfaceForm{};
    }
    if (const Entry* smooth = fields.entry("through stations"); smooth && !fields.has("girths"))
        context.fault(smooth->place, "'through stations' is for panels with 'girths'",
                      "take it out");
}

/// Keys that only a scan has.
void refuse_scan_keys(const Fields& fields, Context& context) {
    for (const std::string_view name : {"surface units", "up", "outside"})
        if (const Entry* entry = fields.entry(name))
            context.fault(entry->place, "'" + std::string(name) + "' is for panels with 'surface'",
                          "take it out");
}

void read_crown(const Fields& fields, Panel& panel, Context& context) {
    const bool over = fields.choice("measured") == std::size_t{1};
    const Entry* entry = fields.entry("crown");
    if (entry == nullptr)
        return;
    if (fields.has("girths"))
        context.fault(entry->place, "'crown' does not go with 'girths'",
                      "girths are measured over the surface already; take 'crown' out");
    if (fields.has("surface"))
        context.fault(entry->place, "'crown' does not go with 'surface'",
                      "the scan has its crown already; take 'crown' out");
    const std::size_t mark = context.mark();
    const auto map = fields.map("crown");
    if (!map)
        return;
    if (!map->has("wide") && !map->has("high") && !context.told_since(mark))
        context.fault(entry->place, "'crown' says nothing",
                      "give the rise over the width, 'wide', and over the height, 'high'");
    panel.crown = Crown{map->mm("wide").value_or(0), map->mm("high").value_or(0), over};
}

void read_allowances(const Fields& fields, Panel& panel, Context& context) {
    const auto map = fields.map("allowances");
    if (!map)
        return;
    panel.allowances = {map->ceil_um("wrap"), map->ceil_um("bleed"), read_handling(*map, context),
                        std::nullopt,
                        map->ceil_um("overlap"), map->ceil_um("flush")};
}

std::optional<Heading> heading_of(const Fields& fields, const Panel& panel) {
    constexpr std::array<Heading, 4> in_table{Heading::right, Heading::left, Heading::up,
                                              Heading::down};
    if (const auto chosen = fields.choice("forward"))
        return in_table[*chosen];
    return trade::usual_forward(panel.lies, panel.sides);
}

void read_words(const Fields& fields, bool doors_in_the_rear, Panel& panel, Context& context) {
    constexpr std::array<Sides, 4> sides{Sides::left, Sides::right, Sides::both, Sides::centre};
    constexpr std::array<SeamRule, 3> seams{SeamRule::never, SeamRule::at_lines,
                                            SeamRule::anywhere};
    if (const auto chosen = fields.choice("sides"))
        panel.sides = sides[*chosen];
    read_what_it_is(fields, doors_in_the_rear, panel, context);
    if (const auto chosen = fields.choice("seam"))
        panel.seam = seams[*chosen];
    if (const auto chosen = fields.choice("keep clear"))
        panel.keep_clear = choices_of(*find_key(In::panel, "keep clear"))[*chosen];
    if (!fields.has("surface"))
        panel.forward = heading_of(fields, panel);
    panel.direction = read_direction(fields);
    panel.faces = fields.count("faces").value_or(1);
    panel.count = fields.count("count").value_or(1);
    panel.group = fields.name("group").value_or("");
    panel.extra = fields.name("extra").value_or("");
    panel.redo_percent = fields.percent("redo");
    panel.tolerance = fields.ceil_um("tolerance");
    panel.batch_free = fields.yes_no("batch free").value_or(false);
}

} // namespace

Panel read_panel(const Entry& entry, const Names& hardware, bool doors_in_the_rear,
                 Context& context) {
    context.panel = entry.key;
    Panel panel;
    panel.name = entry.key;
    panel.place = entry.place;
    check_name(entry.key, "its name", entry.place, context);
    const Fields fields(entry.value, In::panel, "it", entry.place, context);
    if (fields.is_map()) {
        read_form(fields, panel, context);
        read_crown(fields, panel, context);
        read_words(fields, doors_in_the_rear, panel, context);
        if (std::holds_alternative<SurfaceForm>(panel.form))
            read_surface(fields, panel, context);
        else
            refuse_scan_keys(fields, context);
        read_allowances(fields, panel, context);
        read_edges(fields, hardware, panel, context);
        read_parts(fields, hardware, panel, context);
        check_shapes(panel, context);
    }
    context.panel.clear();
    return panel;
}

std::optional<Handling> read_handling(const Fields& allowances, Context& context) {
    const Entry* entry = allowances.entry("handling");
    if (entry == nullptr)
        return std::nullopt;
    if (entry->value.kind != Node::Kind::map) {
        const auto want = allowances.ceil_um("handling");
        return want ? std::optional(Handling{*want, std::min(*want, trade::least_margin)})
                    : std::nullopt;
    }
    const auto map = allowances.map("handling");
    const auto want = map ? map->ceil_um("want") : std::nullopt;
    if (!want)
        return std::nullopt;
    const Handling out{*want, map->ceil_um("least").value_or(std::min(*want, trade::least_margin))};
    if (out.least > out.want)
        context.fault(map->entry("least")->place, "'least' is more than 'want'",
                      "give the smaller margin as 'least'");
    return out;
}

std::optional<Direction> read_direction(const Fields& fields) {
    constexpr std::array<Direction, 3> in_table{Direction::one_way, Direction::two_way,
                                                Direction::any};
    const auto chosen = fields.choice("direction");
    return chosen ? std::optional(in_table[*chosen]) : std::nullopt;
}

} // namespace pelt::read
