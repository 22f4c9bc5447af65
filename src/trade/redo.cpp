// SPDX-License-Identifier: MIT
// Common practice, no source: the middle of what is common.
#include "trade/redo.hpp"

#include <algorithm>
#include <array>

namespace pelt::trade {
namespace {

using enum PanelKind;

struct Row {
    PanelKind kind;
    double percent;
};

constexpr double of_others = 5;

constexpr auto chances = std::to_array<Row>({
    {hood, 3},
    {front_fender, 4},
    {quarter, 7},
    {bed_side, 3},
    {trunk_lid, 5.5},
    {engine_lid, 5.5},
    {hatch, 8},
    {drop_gate, 8},
    {front_bumper, 15},
    {rear_bumper, 11.5},
    {front_door, 3},
    {rear_door, 3},
    {sliding_door, 3},
    {door, 3},
    {sill, 4},
    {loading_sill, 4},
    {truck_skirt, 3},
    {a_pillar, 4},
    {b_pillar, 4},
    {c_pillar, 4},
    {cant_rail, 4},
    {roof_gutter, 4},
    {roof, 4},
    {mirror_cap, 20},
    {mirror_arm, 20},
    {fuel_flap, 3},
    {door_handle, 20},
    {spoiler, 17.5},
    {aerofoil, 17.5},
    {wing_upright, 17.5},
    {wing_end_plate, 17.5},
    {door_jamb, 8},
    {bed_wall, 3},
    {cargo_wall, 3},
    {tank, 20},
    {fairing, 11.5},
    {headlamp_fairing, 11.5},
    {side_fairing, 11.5},
    {seat_fairing, 11.5},
    {tail_fairing, 11.5},
});

} // namespace

double redo_percent(PanelKind is) {
    const auto row =
        std::find_if(chances.begin(), chances.end(), [&](const Row& r) { return r.kind == is; });
    return row == chances.end() ? of_others : row->percent;
}

double redo_factor(FilmKind kind, bool curved) {
    switch (kind) {
    case FilmKind::cast:
        return 1;
    case FilmKind::hybrid:
        return 1.75;
    case FilmKind::calendered:
        return curved ? 2.5 : 1;
    case FilmKind::polyurethane:
        return 1.3;
    }
    return 1;
}

} // namespace pelt::trade
