// SPDX-License-Identifier: MIT
// What a job uses up beside film, and how long its edges and parts take. Common practice, no
// source, throughout.
#pragma once

#include <array>
#include <string_view>

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

struct Amount {
    std::string_view what;
    std::string_view how_much;
};

/// For a full change of color of a five-door car.
inline constexpr auto usual_amounts = std::to_array<Amount>({
    {"wipe-down fluid", "1 to 2 l"},
    {"degreaser", "0.5 to 1 l"},
    {"clay", "100 to 200 g"},
    {"lint-free wipes", "40 to 80"},
    {"cutting tape", "10 to 25 m"},
    {"edge tape", "5 to 15 m"},
    {"masking tape", "1 or 2 rolls"},
    {"double-sided tape for badges", "1 to 3 m"},
    {"squeegee felts", "2 to 4"},
    {"gloves", "10 to 20 pairs"},
});

/// Only under a condition, which stands behind the amount.
inline constexpr auto amounts_at_need = std::to_array<Amount>({
    {"glue remover", "0.5 to 2 l where old film comes off"},
    {"primer", "20 to 100 ml only where the film's maker allows it"},
});

} // namespace pelt::trade
