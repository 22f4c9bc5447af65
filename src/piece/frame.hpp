// SPDX-License-Identifier: MIT
// From the panel's drawing to the piece's own frame, where forward is +x. Inside piece/ only.
#pragma once

#include "model/film.hpp"
#include "model/vehicle.hpp"

#include <optional>

namespace pelt::piece {

/// The way forward in the drawing: as the panel says; else towards the nose on a left or right
/// panel; else along +x where film may lie in any direction. None: the file must say.
std::optional<Heading> heading_of(const Panel& panel, const Film& film);

/// The turn that brings forward to +x.
Turn to_piece_frame(Heading heading);

/// The same for a point in millimetres.
Point in_piece_frame(Point p, Heading heading);

/// The way back.
Point from_piece_frame(Point p, Heading heading);

/// The twin on the other side: y negated, in the normal form of geometry/.
Polygon mirrored(const Polygon& polygon);

} // namespace pelt::piece
