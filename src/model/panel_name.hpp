// SPDX-License-Identifier: MIT
// What a panel is and how it lies, as the trade's table of names tells it (trade/names.hpp).
#pragma once

namespace pelt {

enum class PanelKind {
    plain_panel, ///< nothing is known of it but its size
    hood,
    front_fender,
    quarter,
    bed_side,
    trunk_lid,
    engine_lid,
    hatch,
    drop_gate,
    front_bumper,
    rear_bumper,
    front_door,
    rear_door,
    sliding_door,
    door, ///< of a vehicle that has one a side
    sill,
    loading_sill,
    running_board,
    step_plate,
    truck_skirt,
    a_pillar,
    b_pillar,
    c_pillar, ///< a D pillar too
    cant_rail,
    roof_gutter,
    roof,
    header,
    mirror_cap,
    mirror_arm,
    fuel_flap,
    door_handle,
    spoiler,
    aerofoil,
    wing_upright,
    wing_end_plate,
    grille,
    front_splitter,
    diffuser,
    belly_pan,
    arch_flare,
    trim,
    small_cover,
    lamp_ring,
    lamp_surround,
    door_jamb,
    bed_wall,
    cargo_wall,
    corner_panel,
    tank,
    fairing,
    headlamp_fairing,
    side_fairing,
    seat_fairing,
    tail_fairing,
    front_mudguard,
    rear_mudguard,
    radiator_shroud,
};

/// The face of the vehicle that a panel belongs to.
enum class LiesOn { side, top, front, rear };

} // namespace pelt
