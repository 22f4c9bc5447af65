// SPDX-License-Identifier: MIT
// What is taken of a vehicle that was not measured, but is like another one. Common practice, no
// source: how far off such sizes are is an assumption, to be told as one.
#pragma once

#include "model/vehicle.hpp"

namespace pelt::trade {

/// An axis of the vehicle.
enum class Axis { length, width, height };

/// The vehicle's axes along which a panel's drawing runs.
struct PanelAxes {
    Axis x = Axis::width;
    Axis y = Axis::length;
};

/// Forward is length on sides and tops; across is width on tops, fronts and rears; what stands
/// upright is height. A panel that is not known to lie anywhere is taken for a top. Without an
/// arrow the nose is taken to be to the left on a side, and up in the drawing elsewhere.
PanelAxes axes_of(const Panel& panel);

/// Mirrors, handles and flaps are as large on a small vehicle as on a large one.
bool keeps_its_size(const Panel& panel);

/// A vehicle that is so much higher has higher panels by half of that: the clearance under it, the
/// wheels and the glass take the other half.
inline constexpr double upright_share = .5;

/// Two sizes of a panel are off by exp(this × z) each, z a standard normal number of its own; all
/// sizes along one axis of the vehicle together by exp(that × z).
inline constexpr double panel_size_spread = .05;
inline constexpr double axis_spread = .015;

/// A width that differs by more is likely to be taken over the mirrors.
inline constexpr double mirrors_percent = 6;

/// No vehicle is like another one that is so many times as large.
inline constexpr double unlike = 2;

/// An order on such sizes suffices in so many of 100 cases where nothing else is asked.
inline constexpr double usual_sure_percent = 90;

} // namespace pelt::trade
