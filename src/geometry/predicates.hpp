// SPDX-License-Identifier: MIT
// Exact answers about figures on the grid: no rounding, no tolerance. Coordinates up to 2^61 um.
#pragma once

#include "model/polygon.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace pelt::geometry {

/// +1 when a, b, c turn left, -1 when they turn right, 0 when they lie on one line.
int orientation(GridPoint a, GridPoint b, GridPoint c);

/// True when p lies on the segment from a to b, its ends included.
bool on_segment(GridPoint p, GridPoint a, GridPoint b);

/// True when the closed segments a-b and c-d have a point in common.
bool segments_meet(GridPoint a, GridPoint b, GridPoint c, GridPoint d);

enum class Where { outside, on, inside };

/// Where a point lies with respect to a simple ring of either orientation.
Where locate(GridPoint p, const Ring& ring);

/// Two sides that touch or cross though they should not. Side i of a ring runs from point i to the
/// next one. (ring_a, side_a) is before (ring_b, side_b).
struct Contact {
    std::size_t ring_a = 0;
    std::size_t side_a = 0;
    std::size_t ring_b = 0;
    std::size_t side_b = 0;
    friend auto operator<=>(const Contact&, const Contact&) = default;
};

/// How a set of rings lies.
struct Arrangement {
    /// The contact that lies farthest left (then lowest), if any.
    std::optional<Contact> contact;
    /// For every ring the ring that holds it most closely. Meaningless when there is a contact.
    std::vector<std::optional<std::size_t>> parents;
};

/// Looks for contacts within each ring (it crosses or touches itself) and between rings; without
/// any, finds which ring lies in which. Rings have three points at least, no two consecutive ones
/// alike. Takes n log n steps for n points: the sweep of Shamos and Hoey, "Geometric intersection
/// problems", 17th Symposium on Foundations of Computer Science, 1976, with every comparison exact.
Arrangement arrange(const std::vector<Ring>& rings);

/// True when the ring neither crosses nor touches itself.
bool is_simple(const Ring& ring);

/// True when `inner` lies within `outer` without touching it. Both are simple.
bool lies_inside(const Ring& inner, const Ring& outer);

/// True when two simple rings have no point in common, their insides included.
bool lie_apart(const Ring& a, const Ring& b);

} // namespace pelt::geometry
