// SPDX-License-Identifier: MIT
// How often a piece is spoiled and cut again.
#pragma once

#include "model/film.hpp"
#include "model/panel_name.hpp"

namespace pelt::trade {

/// For skilled hands in a clean room with cast film, in percent.
double redo_percent(PanelKind is);

/// What a chance is multiplied by with film of this kind, on curved panels or flat ones.
double redo_factor(FilmKind kind, bool curved);

/// Of a panel that asks for more than the film stretches: so often at least, in percent.
inline constexpr double redo_percent_over_the_limit = 40;

} // namespace pelt::trade
