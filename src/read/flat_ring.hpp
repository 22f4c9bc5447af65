// SPDX-License-Identifier: MIT
// Outlines as rings on the grid, for checking only: what is cut is developed from the outline
// itself. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace pelt::read {

/// A ring and the segment of the form (an edge) to which each of its sides belongs.
struct FlatRing {
    Ring ring;
    std::vector<std::size_t> segment;
};

inline constexpr double arc_tolerance_mm = 0.05;

/// Arcs become chords that stay within arc_tolerance_mm of them. None when that takes more points
/// than an outline may have.
std::optional<FlatRing> flat_ring(const OutlineForm& form);

/// The ring that a girth panel's stations span; where edges are smooth, one around it.
Ring flat_ring(const GirthsForm& form);

/// True when all corners and points on arcs lie on one circle, within a hundredth of its radius,
/// and every edge is an arc.
bool is_round(const OutlineForm& form);

/// The rectangle of an inlay.
Ring flat_ring(const Inlay& inlay);

} // namespace pelt::read
