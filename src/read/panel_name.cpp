// SPDX-License-Identifier: MIT
#include "read/panel_name.hpp"

#include "read/quantities.hpp"
#include "read/suggest.hpp"
#include "trade/bodies.hpp"
#include "trade/names.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <optional>
#include <string>

namespace pelt::read {
namespace {

std::vector<std::string> known_words() {
    std::vector<std::string> out;
    for (const trade::PanelName& row : trade::panel_names())
        out.emplace_back(row.word);
    return out;
}

void tell_unknown(const Entry& entry, const trade::Named& named, Context& context) {
    const std::string written = "is " + quoted(entry.value.text);
    if (named.could_be.empty())
        context.fault(entry.value.place, written + " is not known",
                      did_you_mean(entry.value.text, known_words(), "it is one of"));
    else
        context.fault(entry.value.place, written + " could be several things",
                      "write " + listed(named.could_be));
}

/// By the key `is`, else by the name.
trade::Named named_by(const Fields& fields, const std::string& name, Context& context) {
    const auto word = fields.text("is");
    if (!word)
        return trade::named(name);
    trade::Named named = trade::named(*word);
    if (!named.is)
        tell_unknown(*fields.entry("is"), named, context);
    return named;
}

/// Of what comes on more than one face, what is on one side or both is taken for a side panel: the
/// "rear" of a rear door's trim strip tells of the door.
std::optional<LiesOn> lies_by_sides(Sides sides, std::optional<LiesOn> by_its_word) {
    return sides == Sides::centre ? by_its_word : LiesOn::side;
}

std::optional<PanelKind> what_is(const Entry& panel) {
    for (const Entry& key : panel.value.entries)
        if (key.key == "is" && key.value.kind == Node::Kind::scalar)
            return trade::named(key.value.text).is;
    return trade::named(panel.key).is;
}

} // namespace

namespace {

using Kinds = std::initializer_list<PanelKind>;

bool has_any(const std::vector<Entry>& panels, Kinds kinds) {
    return std::any_of(panels.begin(), panels.end(), [&](const Entry& panel) {
        const auto is = what_is(panel);
        return is && std::find(kinds.begin(), kinds.end(), *is) != kinds.end();
    });
}

/// A cab door is what a van has.
bool has_a_cab(const std::vector<Entry>& panels) {
    return std::any_of(panels.begin(), panels.end(),
                       [](const Entry& panel) { return panel.key.find("cab ") == 0; });
}

} // namespace

RearDoors where_rear_doors_are(std::string_view body, const std::vector<Entry>& panels) {
    if (trade::has_doors_in_the_rear(body) || has_any(panels, {PanelKind::sliding_door}))
        return RearDoors::in_the_rear;
    if (!body.empty() || has_any(panels, {PanelKind::quarter, PanelKind::hatch,
                                          PanelKind::trunk_lid, PanelKind::bed_side}))
        return RearDoors::in_the_sides;
    if (has_any(panels, {PanelKind::cargo_wall}))
        return RearDoors::in_the_rear;
    return has_any(panels, {PanelKind::front_door}) && !has_a_cab(panels)
               ? RearDoors::in_the_sides
               : RearDoors::in_doubt;
}

void read_what_it_is(const Fields& fields, RearDoors rear_doors, Panel& panel, Context& context) {
    constexpr std::array<LiesOn, 4> in_table{LiesOn::side, LiesOn::top, LiesOn::front,
                                             LiesOn::rear};
    const trade::Named named = named_by(fields, panel.name, context);
    panel.is = named.is;
    if (const auto chosen = fields.choice("lies"))
        panel.lies = in_table[*chosen];
    else if (panel.is == PanelKind::rear_door && rear_doors == RearDoors::in_the_rear)
        panel.lies = LiesOn::rear;
    else
        panel.lies = named.lies ? named.lies : lies_by_sides(panel.sides, named.by_its_word);
    panel.lies_in_doubt = panel.is == PanelKind::rear_door && rear_doors == RearDoors::in_doubt &&
                          !fields.has("lies") && !fields.has("forward");
}

} // namespace pelt::read
