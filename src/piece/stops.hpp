// SPDX-License-Identifier: MIT
// Where film ends short of an edge. Inside piece/ only.
#pragma once

#include "model/blank.hpp"
#include "piece/edge_work.hpp"

#include <vector>

namespace pelt::piece {

/// The bands to take from the grown outline: for every edge with a stop the strip that deep along
/// it, lengthened at an outward corner by what the neighbour's move added there. Where two such
/// strips meet (the chords of an arc too) their inner sides join by the rule of geometry/grow.hpp,
/// seen from inside, so that no spike of film is left towards an inward corner.
std::vector<Polygon> stop_bands(const TaggedRing& outline, const std::vector<EdgeWork>& work);

} // namespace pelt::piece
