// SPDX-License-Identifier: MIT
#include "read/panel.hpp"

#include "read/diagonal.hpp"
#include "read/edges.hpp"
#include "read/flat_ring.hpp"
#include "read/outline.hpp"
#include "read/panel_name.hpp"
#include "read/quantities.hpp"
#include "read/shapes.hpp"
#include "read/surface.hpp"
#include "trade/cautions.hpp"
#include "trade/forward.hpp"
#include "trade/rolls.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace pelt::read {
namespace {

/// "a lamp", "an ultrasonic sensor"
std::string in_words(const std::string& kept_clear) {
    if (kept_clear == "ultrasonic")
        return "an ultrasonic sensor";
    return "a " + kept_clear;
}

/// Exactly one of the ways to describe a panel.
void check_one_form(const Fields& fields, Context& context) {
    std::vector<std::string_view> given;
    for (const std::string_view form : forms_of_panels)
        if (fields.has(form))
            given.push_back(form);
    const bool meant = std::any_of(forms_of_panels.begin(), forms_of_panels.end(),
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

/// Both or neither: a rise over one of the two says nothing of the stretch.
void read_rises(const Fields& fields, GirthsForm& form, Context& context) {
    form.rise_over_spine_mm = fields.mm("rise over spine");
    form.rise_over_girth_mm = fields.mm("rise over girth");
    for (const auto& [given, missing] : {std::pair{"rise over spine", "rise over girth"},
                                         std::pair{"rise over girth", "rise over spine"}})
        if (fields.has(given) && !fields.mentions(missing))
            context.fault(fields.entry(given)->place,
                          "'" + std::string(given) + "' needs '" + missing + "' beside it",
                          "give both, 0 where the panel is straight that way");
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
    read_rises(fields, form, context);
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
        if (const auto size = fields.size("size"))
            panel.form = rectangle_form(*size, fields.entry("size")->value.place);
    } else if (fields.has("girths")) {
        panel.form = read_girths(fields, context).value_or(GirthsForm{});
    } else if (fields.has("surface")) {
        panel.form = SurfaceForm{};
    }
    for (const std::string_view name : {"through stations", "rise over spine", "rise over girth"})
        if (const Entry* entry = fields.entry(name); entry && !fields.has("girths"))
            context.fault(entry->place,
                          "'" + std::string(name) + "' is for panels with 'girths'",
                          name == "through stations" ? "take it out"
                                                     : "give the rise as 'crown' instead");
}

/// Keys that only a scan has.
void refuse_scan_keys(const Fields& fields, Context& context) {
    for (const std::string_view name : {"surface units", "up", "outside"})
        if (const Entry* entry = fields.entry(name))
            context.fault(entry->place, "'" + std::string(name) + "' is for panels with 'surface'",
                          "take it out");
}

/// One rise, whichever way across: only what is round has one.
void read_round_crown(const Fields& fields, bool over, Panel& panel, Context& context) {
    const auto rise = fields.mm("crown");
    const auto* outline = std::get_if<OutlineForm>(&panel.form);
    if (!rise || outline == nullptr || outline->segments.empty())
        return;
    if (*rise == 0 || is_round(*outline))
        panel.crown = Crown{*rise, *rise, over};
    else
        context.fault(fields.entry("crown")->value.place,
                      "'crown' is one figure, and the panel is not round",
                      "give the rise over the width and over the height: {wide: ..., high: ...}");
}

void read_crown(const Fields& fields, Panel& panel, Context& context) {
    const bool over = fields.choice("measured") == std::size_t{1};
    const Entry* entry = fields.entry("crown");
    if (entry == nullptr)
        return;
    if (fields.has("girths"))
        context.fault(entry->place, "'crown' does not go with 'girths'",
                      "give 'rise over spine' and 'rise over girth' instead");
    if (fields.has("surface"))
        context.fault(entry->place, "'crown' does not go with 'surface'",
                      "the scan has its crown already; take 'crown' out");
    if (entry->value.kind == Node::Kind::scalar && begins_like_a_length(entry->value.text)) {
        read_round_crown(fields, over, panel, context);
        return;
    }
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
    panel.allowances = {map->ceil_um("tuck"), map->ceil_um("bleed"), read_handling(*map, context),
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

/// Film without metal may lie over radar and aerials; nothing may over what sees or is seen.
void read_keep_clear(const std::string& what, const Fields& fields, Panel& panel,
                     Context& context) {
    panel.keep_clear = what;
    if (!trade::works_through_film(what))
        context.fault(fields.entry("keep clear")->place,
                      "film never covers what is kept clear for " + in_words(what),
                      "take the panel out; where the film goes round it, make it an opening with "
                      "'keep clear: " + what + "'");
}

void read_words(const Fields& fields, RearDoors rear_doors, Panel& panel, Context& context) {
    constexpr std::array<Sides, 5> sides{Sides::left, Sides::right, Sides::both, Sides::centre,
                                         Sides::centre}; // written either way
    constexpr std::array<SeamRule, 3> seams{SeamRule::never, SeamRule::at_lines,
                                            SeamRule::anywhere};
    if (const auto chosen = fields.choice("sides"))
        panel.sides = sides[*chosen];
    read_what_it_is(fields, rear_doors, panel, context);
    if (const auto chosen = fields.choice("seam"))
        panel.seam = seams[*chosen];
    if (const auto chosen = fields.choice("keep clear"))
        read_keep_clear(std::string(choices_of(*find_key(In::panel, "keep clear"))[*chosen]), fields,
                        panel, context);
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

Panel read_panel(const Entry& entry, const Names& hardware, RearDoors rear_doors,
                 const PanelChange& change, Context& context) {
    context.panel = entry.key;
    Panel panel;
    panel.name = entry.key;
    panel.place = entry.place;
    check_name(entry.key, "its name", entry.place, context);
    const Fields fields(entry.value, In::panel, "it", entry.place, context);
    if (fields.is_map()) {
        read_form(fields, panel, context);
        read_crown(fields, panel, context);
        read_words(fields, rear_doors, panel, context);
        if (std::holds_alternative<SurfaceForm>(panel.form))
            read_surface(fields, panel, context);
        else
            refuse_scan_keys(fields, context);
        read_allowances(fields, panel, context);
        read_edges(fields, hardware, panel, context);
        read_parts(fields, hardware, panel, context);
        read_diagonal(fields, panel, context);
        if (change)
            change(panel);
        check_shapes(panel, context);
    }
    context.panel.clear();
    return panel;
}

std::optional<Handling> read_handling(const Fields& allowances, Context& context) {
    const Entry* entry = allowances.entry("margin");
    if (entry == nullptr)
        return std::nullopt;
    if (entry->value.kind != Node::Kind::map) {
        const auto want = allowances.ceil_um("margin");
        return want ? std::optional(Handling{*want, std::min(*want, trade::least_margin)})
                    : std::nullopt;
    }
    const auto map = allowances.map("margin");
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
