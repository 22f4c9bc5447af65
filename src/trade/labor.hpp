// SPDX-License-Identifier: MIT
// How long work takes: one skilled person, cast film, parts off. Every figure is common practice,
// no source: an assumption that a shop replaces by its own.
#pragma once

#include "model/film.hpp"
#include "model/panel_name.hpp"
#include "model/quote.hpp"
#include "trade/cautions.hpp"
#include "trade/consumables.hpp"

#include <cstdint>
#include <optional>

namespace pelt::trade {

/// A range of the trade: what is reckoned lies a quarter up it.
constexpr Minutes within(double low, double high) {
    return {low, low + (high - low) / 4, high};
}
/// A single figure: a quarter less at best, two fifths more at worst.
constexpr Minutes about(double taken) {
    return {0.75 * taken, taken, 1.4 * taken};
}

/// Of a panel by what it is; none where no range is common.
std::optional<Minutes> time_on(PanelKind is);

/// Of a panel that only its shape tells of: (8 + 14 area + 6 tucked) × the factor of what it is,
/// area in m², tucked edges in m.
Minutes time_by_shape(PanelKind is, double area_m2, double tucked_m);

/// What another kind of film takes for a minute of cast film. Calendered film is slow on what is
/// crowned only.
double factor_of(std::optional<FilmKind> kind, bool crowned);

/// How long film rests between its last heat and the parts that go back, in minutes.
std::int64_t rest_of(std::optional<FilmKind> kind);

inline constexpr double factor_own_part_left_on = 1.2;
inline constexpr Minutes an_inlay{10, 15, 25};
inline constexpr Minutes a_metre_of_seam = about(6);
inline constexpr Minutes post_heat_a_metre{minutes_a_metre_of_edge.least, 1.5,
                                           minutes_a_metre_of_edge.most};
inline constexpr Minutes old_film_a_piece = about(5);
inline constexpr Minutes old_film_a_square_metre = about(30);
inline constexpr Minutes old_glue_a_square_metre = about(15);
inline constexpr Minutes take_in = within(30, 60);
inline constexpr Minutes final_check = within(60, 120);
inline constexpr Minutes wash_a_square_metre = within(5, 10);     ///< 1 to 2 h of a hatchback
inline constexpr Minutes cleaning_a_metre_of_edge = within(1, 2); ///< 1.5 to 3 h of a hatchback
inline constexpr Minutes a_badge = within(5, 15);

/// Film longer than `two_people_above` and wider than this is laid by two people for a third of its
/// minutes.
inline constexpr Um two_people_wider_than = 500'000;
inline constexpr double share_with_help = 1.0 / 3;

} // namespace pelt::trade
