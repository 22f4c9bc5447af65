// SPDX-License-Identifier: MIT
#include "trade/labor.hpp"

#include <algorithm>
#include <array>

namespace pelt::trade {
namespace {

using enum PanelKind;

struct PanelTime {
    PanelKind is;
    Minutes time;
};

// Common practice, no source.
constexpr auto panel_times = std::to_array<PanelTime>({
    {hood, within(50, 90)},
    {roof, within(50, 90)},
    {front_door, within(45, 75)},
    {rear_door, within(40, 70)},
    {front_fender, within(35, 60)},
    {quarter, within(60, 110)},
    {trunk_lid, within(50, 90)},
    {hatch, within(70, 120)},
    {front_bumper, within(120, 240)},
    {rear_bumper, within(90, 180)},
    {mirror_cap, within(25, 50)},
    {door_handle, within(10, 20)},
    {fuel_flap, within(10, 15)},
    {a_pillar, within(15, 30)},
    {b_pillar, within(15, 30)},
    {c_pillar, within(15, 30)},
    {sill, within(25, 45)},
    {spoiler, within(45, 100)},
    {door_jamb, within(40, 75)},
    {tank, within(60, 120)},
    {headlamp_fairing, within(20, 45)},
    {side_fairing, within(20, 45)},
    {seat_fairing, within(20, 45)},
    {tail_fairing, within(20, 45)},
});

struct ShapeFactor {
    PanelKind is;
    double factor;
};

// Fitted to the ranges above: an assumption. What is not named takes that of a door.
constexpr double of_other_panels = 1.4;
constexpr auto shape_factors = std::to_array<ShapeFactor>({
    {cargo_wall, 0.4},   {roof, 1},          {sill, 1},        {a_pillar, 1},     {b_pillar, 1},
    {c_pillar, 1},       {cant_rail, 1},     {roof_gutter, 1}, {header, 1},       {trim, 1},
    {loading_sill, 1},   {quarter, 2.2},     {trunk_lid, 2.2}, {engine_lid, 2.2}, {hatch, 2.2},
    {front_bumper, 2.7}, {rear_bumper, 2.7}, {spoiler, 2.7},   {aerofoil, 2.7},   {mirror_cap, 2.7},
});

} // namespace

std::optional<Minutes> time_on(PanelKind is) {
    const auto found = std::find_if(panel_times.begin(), panel_times.end(),
                                    [&](const PanelTime& row) { return row.is == is; });
    return found == panel_times.end() ? std::nullopt : std::optional(found->time);
}

Minutes time_by_shape(PanelKind is, double area_m2, double tucked_m) {
    const auto found = std::find_if(shape_factors.begin(), shape_factors.end(),
                                    [&](const ShapeFactor& row) { return row.is == is; });
    const double factor = found == shape_factors.end() ? of_other_panels : found->factor;
    return about((8 + 14 * area_m2 + 6 * tucked_m) * factor);
}

double factor_of(std::optional<FilmKind> kind, bool crowned) {
    switch (kind.value_or(FilmKind::cast)) {
    case FilmKind::cast:
        return 1;
    case FilmKind::hybrid:
        return 1.25;
    case FilmKind::calendered:
        return crowned ? 1.45 : 1;
    case FilmKind::polyurethane:
        return 1.45;
    }
    return 1;
}

std::int64_t rest_of(std::optional<FilmKind> kind) {
    constexpr std::int64_t hour = 60;
    return kind == FilmKind::polyurethane ? 24 * hour : 12 * hour;
}

} // namespace pelt::trade
