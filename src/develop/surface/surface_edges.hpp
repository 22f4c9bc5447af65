// SPDX-License-Identifier: MIT
// Where the outline of a scan turns from one edge to the next. Inside develop/ only.
#pragma once

#include "model/blank.hpp"

#include <vector>

namespace pelt::develop {

/// Divides a counter-clockwise ring of many short sides into edges that look down, right, up or
/// left on the whole: by the outward normal, smoothed along the ring; stretches shorter than a
/// fortieth of the ring go to a neighbour. Edges are numbered "1-2", "2-3", …, from where the
/// longest one that looks down begins; the ring is turned to begin there.
struct DividedRing {
    TaggedRing ring;
    std::vector<BlankEdge> edges;
};
DividedRing divided_ring(const std::vector<Point>& ring);

} // namespace pelt::develop
