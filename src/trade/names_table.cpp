// SPDX-License-Identifier: MIT
// Common practice, no source: the words of North America first, those of Britain beside them.
// Words for a panel that comes on more than one face hold none of "front", "rear", "side": they
// would say how it lies, and one word would not be as good as another.
#include "trade/names.hpp"

#include <algorithm>
#include <array>

namespace pelt::trade {
namespace {

using enum PanelKind;
constexpr auto side = LiesOn::side;
constexpr auto top = LiesOn::top;
constexpr auto front = LiesOn::front;
constexpr auto rear = LiesOn::rear;

constexpr auto names = std::to_array<PanelName>({
    {plain_panel, "plain panel"},
    {hood, "hood", top, "bonnet"},
    {front_fender, "front fender", side, "fender | front wing"},
    {quarter, "quarter", side, "rear quarter | quarter panel | rear fender"},
    {bed_side, "bed side", side, "bedside"},
    {trunk_lid, "trunk lid", top, "boot lid | deck lid | decklid | boot | trunk"},
    {engine_lid, "engine lid", top},
    {hatch, "hatch", rear, "liftgate | hatch lid"},
    {drop_gate, "drop gate", rear, "pickup tailgate"},
    {front_bumper, "front bumper", front, "front bumper cover | front bumper skin"},
    {rear_bumper, "rear bumper", rear, "rear bumper cover | rear bumper skin"},
    {front_door, "front door", side, "cab door"},
    {rear_door, "rear door", side},
    {sliding_door, "sliding door", side},
    {door, "door", side},
    {sill, "sill", side, "rocker | rocker panel"},
    {loading_sill, "loading sill", rear},
    {running_board, "running board", side},
    {step_plate, "step plate"},
    {truck_skirt, "truck skirt", side, "body skirt"},
    {a_pillar, "A pillar", side,
     "screen pillar | windscreen pillar | windshield pillar | front pillar"},
    {b_pillar, "B pillar", side, "door frame pillar | door pillar"},
    {c_pillar, "C pillar", side, "D pillar | rear pillar | tailgate pillar"},
    {cant_rail, "cant rail", side, "roof edge"},
    {roof_gutter, "roof gutter", side, "gutter"},
    {roof, "roof", top},
    {header, "header", std::nullopt, "screen header | windshield header"},
    {mirror_cap, "mirror cap", side,
     "mirror | mirror cover | mirror shell | door mirror | door mirror cap | door mirror cover | "
     "wing mirror | wing mirror cap | wing mirror cover | side mirror | side mirror cap | "
     "side mirror cover"},
    {mirror_arm, "mirror arm", side},
    {fuel_flap, "fuel flap", side, "fuel door | filler flap | charge flap"},
    {door_handle, "door handle", side, "handle | sliding door handle | hatch handle"},
    {spoiler, "spoiler", top,
     "roof spoiler | tail spoiler | lid spoiler | trunk spoiler | trunk lid spoiler | "
     "boot spoiler | boot lid spoiler | hatch spoiler"},
    {aerofoil, "aerofoil", top, "wing blade"},
    {wing_upright, "wing upright", side},
    {wing_end_plate, "wing end plate", side, "end plate | wing end"},
    {grille, "grille", front, "grille frame | grille surround | grille band"},
    {front_splitter, "front splitter", front, "splitter"},
    {diffuser, "diffuser", std::nullopt, "valance"},
    {belly_pan, "belly pan"},
    {arch_flare, "arch flare", side, "wheel arch flare | wheel arch trim"},
    {trim, "trim", std::nullopt, "trim strip | door trim | door trim strip | tail pipe trim"},
    {small_cover, "small cover", std::nullopt,
     "tow eye cover | radar cover | fork cover | frame cover"},
    {lamp_ring, "lamp ring"},
    {lamp_surround, "lamp surround"},
    {door_jamb, "door jamb", side,
     "jamb | door shut | shut | door shut face | shut face | door aperture | aperture"},
    {bed_wall, "bed wall", std::nullopt, "load bed wall"},
    {cargo_wall, "cargo wall", std::nullopt, "wall | box wall | van wall"},
    {corner_panel, "corner panel", side, "corner | corner post"},
    {tank, "tank", top, "fuel tank"},
    {fairing, "fairing"},
    {headlamp_fairing, "headlamp fairing", std::nullopt, "headlamp cowl"},
    {side_fairing, "side fairing", side, "side cowl"},
    {seat_fairing, "seat fairing", top, "seat cowl"},
    {tail_fairing, "tail fairing", std::nullopt, "tail cowl"},
    {front_mudguard, "front mudguard", top},
    {rear_mudguard, "rear mudguard", top},
    {radiator_shroud, "radiator shroud", side},
});

constexpr bool every_kind_in_its_place() {
    for (std::size_t i = 0; i < names.size(); ++i)
        if (static_cast<std::size_t>(names[i].kind) != i)
            return false;
    return names.back().kind == radiator_shroud;
}
static_assert(every_kind_in_its_place());

// A wing is a fender in Britain and carries a race car's load elsewhere; and so on.
constexpr auto ambiguous = std::to_array<AmbiguousName>({
    {"wing", "front fender | quarter | aerofoil"},
    {"rear wing", "quarter | aerofoil"},
    {"back door", "hatch | rear door"},
    {"tailgate", "hatch | drop gate"},
    {"roof rail", "cant rail | trim"},
    {"bumper | bumper cover | bumper skin", "front bumper | rear bumper"},
    {"cowl", "fairing | plain panel"},
    {"lip", "front splitter | arch flare | spoiler"},
    {"box side", "bed side | cargo wall"},
    {"side skirt | skirt", "sill | truck skirt"},
    {"pillar", "A pillar | B pillar | C pillar"},
    {"mudguard", "front mudguard | rear mudguard"},
    {"lid", "trunk lid | hatch | engine lid"},
    {"front quarter", "front fender | quarter"},
    {"front spoiler", "front splitter | spoiler"},
});

} // namespace

std::span<const PanelName> panel_names() {
    return names;
}

std::span<const AmbiguousName> ambiguous_names() {
    return ambiguous;
}

std::string_view word_of(PanelKind kind) {
    return names.at(static_cast<std::size_t>(kind)).word;
}

bool is_flat(PanelKind kind) {
    static constexpr auto flat = std::to_array<PanelKind>(
        {sill, loading_sill, running_board, step_plate, truck_skirt, a_pillar, b_pillar, c_pillar,
         cant_rail, roof_gutter, header, trim, bed_wall, cargo_wall, door_jamb});
    return std::find(flat.begin(), flat.end(), kind) != flat.end();
}

} // namespace pelt::trade
