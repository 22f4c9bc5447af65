// SPDX-License-Identifier: MIT
// The edges of a panel in words, and which way it hangs.
#pragma once

#include "report/facts.hpp"
#include "report/numbers.hpp"

#include <string>

namespace pelt::report {

/// "tuck 28 bottom, 6 window seal, 14 elsewhere; ends short by 3 at 3-4". Edges are called by their
/// name, by the side that they make up (front and rear on a side panel, else left and right of the
/// vehicle), or by their number. Of a part of a panel only the edges that it has, "but for the
/// seam". Nothing is said of inlays: empty.
std::string edges_text(const Job& job, const PlacedPiece& p, const Measures& measures);

/// "cut out on the vehicle: fuel flap, tuck 8, and handle, flush 2": what is done at the openings
/// that lie on the piece; empty without any, and for inlays.
std::string openings_text(const Job& job, const PlacedPiece& p, const Measures& measures);

/// The edge of the piece, as it lies on the table, that is the drawing's upper one: "↑" for the far
/// edge, "←" for that towards the free end. Empty where the piece lies askew or it is not known.
std::string upper_edge_of(const Job& job, const PlacedPiece& p);

} // namespace pelt::report
