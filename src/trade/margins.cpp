// SPDX-License-Identifier: MIT
#include "trade/margins.hpp"

#include <algorithm>
#include <array>

namespace pelt::trade {
namespace {

using enum PanelKind;

constexpr auto flat = std::to_array<PanelKind>(
    {plain_panel, hood,     front_fender, quarter,      bed_side,      trunk_lid,   engine_lid,
     hatch,       drop_gate, front_door,  rear_door,    sliding_door,  door,        sill,
     loading_sill, running_board, step_plate, truck_skirt, a_pillar,   b_pillar,    c_pillar,
     cant_rail,   roof_gutter, roof,      header,       belly_pan,     door_jamb,   bed_wall,
     cargo_wall,  corner_panel});

} // namespace

bool is_flat_by_nature(PanelKind is) {
    return std::find(flat.begin(), flat.end(), is) != flat.end();
}

} // namespace pelt::trade
