// SPDX-License-Identifier: MIT
// What a job uses up beside film, and how long its edges and parts take. Common practice, no
// source, throughout.
#pragma once

namespace pelt::trade {

/// From the least to the most that is usual.
struct Range {
    int least = 0;
    int most = 0;
};

/// Of the clips that come off, so many percent break.
inline constexpr Range clips_broken_percent{10, 20};

/// Blade tips for one panel.
inline constexpr Range blade_tips_a_panel{2, 4};

/// To press down and warm a metre of film edge again, in minutes.
inline constexpr Range minutes_a_metre_of_edge{1, 2};

/// Putting parts back against taking them off: 2.5 to 5 hours against 3 to 6 on a five-door car.
inline constexpr double refit_share = 5.0 / 6;

} // namespace pelt::trade
