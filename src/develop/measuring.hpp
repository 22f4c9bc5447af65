// SPDX-License-Identifier: MIT
// What a wrong tape reading does to a blank.
#pragma once

#include "model/vehicle.hpp"

namespace pelt::develop {

/// How far beyond a blank, on every side and in millimetres, the panel can reach when every reading
/// was off by as much as `reading_mm`: `across_axes` along the drawing's axes, `any_way` square to
/// sides of any slope.
struct ReachBeyond {
    double across_axes = 0;
    double any_way = 0;
};

/// Of a `size` a side is one reading, of an outline every coordinate of every point is, of girths
/// every station; a crown's rises were read too. The point half way along an arc carries its own
/// error further: a parabola through three readings is off by at most 1.25 times theirs between
/// them, where the middle one is half way (the Lebesgue constant of three equal steps; from
/// memory). A scan is no tape reading: nothing, but for a tolerance of the panel's own.
ReachBeyond reach_beyond(const Panel& panel, double reading_mm);

} // namespace pelt::develop
