// SPDX-License-Identifier: MIT
// Common practice, no source: what lies under others or gathers dust first (jambs, then the top,
// the hood, the rear), then one whole side after the other, bumpers, and small parts last.
#include "trade/laying.hpp"

#include <algorithm>
#include <array>

namespace pelt::trade {
namespace {

using enum PanelKind;

struct Row {
    PanelKind kind;
    LayingStep step;
    int within;
    std::optional<LiesOn> lies = std::nullopt; ///< only of panels that lie so
};

constexpr auto places = std::to_array<Row>({
    {door_jamb, LayingStep::jambs, 0},
    {bed_wall, LayingStep::jambs, 1},

    {roof, LayingStep::top, 0},
    {tank, LayingStep::top, 0},
    {a_pillar, LayingStep::top, 1},
    {b_pillar, LayingStep::top, 1},
    {c_pillar, LayingStep::top, 1},
    {cant_rail, LayingStep::top, 1},
    {roof_gutter, LayingStep::top, 1},

    {hood, LayingStep::hood, 0},
    {headlamp_fairing, LayingStep::hood, 1},
    {front_mudguard, LayingStep::hood, 2},

    {trunk_lid, LayingStep::rear, 0},
    {engine_lid, LayingStep::rear, 0},
    {hatch, LayingStep::rear, 0},
    {drop_gate, LayingStep::rear, 0},
    {rear_door, LayingStep::rear, 0, LiesOn::rear},
    {cargo_wall, LayingStep::rear, 0, LiesOn::rear},
    {seat_fairing, LayingStep::rear, 0},
    {loading_sill, LayingStep::rear, 1},
    {tail_fairing, LayingStep::rear, 1},
    {spoiler, LayingStep::rear, 2},
    {aerofoil, LayingStep::rear, 2},
    {wing_upright, LayingStep::rear, 2},
    {wing_end_plate, LayingStep::rear, 2},
    {rear_mudguard, LayingStep::rear, 3},

    {front_fender, LayingStep::sides, 0},
    {front_door, LayingStep::sides, 1},
    {rear_door, LayingStep::sides, 2},
    {sliding_door, LayingStep::sides, 2},
    {door, LayingStep::sides, 2},
    {quarter, LayingStep::sides, 3},
    {corner_panel, LayingStep::sides, 3},
    {bed_side, LayingStep::sides, 4},
    {side_fairing, LayingStep::sides, 4},
    {radiator_shroud, LayingStep::sides, 4},
    {truck_skirt, LayingStep::sides, 4},
    {sill, LayingStep::sides, 5},
    {running_board, LayingStep::sides, 5},

    {step_plate, LayingStep::plain, 0},

    {front_bumper, LayingStep::bumpers, 0},
    {rear_bumper, LayingStep::bumpers, 0},
    {grille, LayingStep::bumpers, 1},
    {front_splitter, LayingStep::bumpers, 1},
    {diffuser, LayingStep::bumpers, 1},
    {belly_pan, LayingStep::bumpers, 1},

    {mirror_cap, LayingStep::small_parts, 1},
    {mirror_arm, LayingStep::small_parts, 1},
    {door_handle, LayingStep::small_parts, 2},
    {fuel_flap, LayingStep::small_parts, 3},
    {arch_flare, LayingStep::small_parts, 4},
    {trim, LayingStep::small_parts, 4},
    {small_cover, LayingStep::small_parts, 4},
    {lamp_ring, LayingStep::small_parts, 4},
});

LayingPlace with_its_face(std::optional<LiesOn> lies) {
    if (!lies)
        return {};
    switch (*lies) {
    case LiesOn::side:
        return {LayingStep::sides, 4};
    case LiesOn::top:
        return {LayingStep::top, 0};
    case LiesOn::front:
        return {LayingStep::hood, 3};
    case LiesOn::rear:
        return {LayingStep::rear, 3};
    }
    return {};
}

} // namespace

LayingPlace laying_place(PanelKind is, std::optional<LiesOn> lies) {
    const auto row = std::find_if(places.begin(), places.end(), [&](const Row& r) {
        return r.kind == is && (!r.lies || r.lies == lies);
    });
    return row == places.end() ? with_its_face(lies) : LayingPlace{row->step, row->within};
}

} // namespace pelt::trade
