// SPDX-License-Identifier: MIT
#include "trade/labor.hpp"

#include <algorithm>
#include <array>

namespace pelt::trade {
namespace {

struct PanelTime {
    std::string_view is;
    WorkTime time;
};

// Common practice, no source.
constexpr auto panel_times = std::to_array<PanelTime>({
    {"hood", within(50, 90)},           {"roof", within(50, 90)},
    {"front door", within(45, 75)},     {"rear door", within(40, 70)},
    {"front fender", within(35, 60)},   {"quarter", within(60, 110)},
    {"trunk lid", within(50, 90)},      {"hatch", within(70, 120)},
    {"front bumper", within(120, 240)}, {"rear bumper", within(90, 180)},
    {"mirror cap", within(25, 50)},     {"door handle", within(10, 20)},
    {"fuel flap", within(10, 15)},      {"A pillar", within(15, 30)},
    {"B pillar", within(15, 30)},       {"C pillar", within(15, 30)},
    {"D pillar", within(15, 30)},       {"sill", within(25, 45)},
    {"spoiler", within(45, 100)},       {"door jamb", within(40, 75)},
    {"tank", within(60, 120)},          {"fairing", within(20, 45)},
});

struct ShapeFactor {
    std::string_view is;
    double factor;
};

// Fitted to the ranges above: an assumption. What is not named takes that of a door.
constexpr double of_other_panels = 1.4;
constexpr auto shape_factors = std::to_array<ShapeFactor>({
    {"cargo wall", 0.4},
    {"roof", 1},
    {"sill", 1},
    {"A pillar", 1},
    {"B pillar", 1},
    {"C pillar", 1},
    {"D pillar", 1},
    {"cant rail", 1},
    {"quarter", 2.2},
    {"trunk lid", 2.2},
    {"hatch", 2.2},
    {"front bumper", 2.7},
    {"rear bumper", 2.7},
    {"spoiler", 2.7},
    {"mirror cap", 2.7},
    {"aerofoil", 2.7},
});

} // namespace

std::optional<WorkTime> time_on(std::string_view is) {
    const auto found = std::find_if(panel_times.begin(), panel_times.end(),
                                    [&](const PanelTime& row) { return row.is == is; });
    return found == panel_times.end() ? std::nullopt : std::optional(found->time);
}

WorkTime time_by_shape(std::string_view is, double area_m2, double tucked_m) {
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
