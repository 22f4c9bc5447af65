// SPDX-License-Identifier: MIT
// A map of stretch made ready to be drawn.
#pragma once

#include "model/blank.hpp"

#include <array>
#include <vector>

namespace pelt::report {

/// A part of a triangle whose stretch lies in one band.
struct Shade {
    int band = 0;
    std::vector<Point> ring;
};

/// The stretch is evened out: at a corner it is the mean of the triangles there, by their area, and
/// it changes evenly in between. Band b goes from b to b + 1 times `step` percent; the last one
/// takes what lies above it too.
std::vector<Shade> shades_of(const StretchMap& map, double step, int bands);

/// The sides of triangles that no other one shares: the panel's outline and its holes.
std::vector<std::array<Point, 2>> rim_of(const StretchMap& map);

} // namespace pelt::report
