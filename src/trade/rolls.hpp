// SPDX-License-Identifier: MIT
// Film as it is sold and gripped. Common practice, no source, throughout.
#pragma once

#include "model/film.hpp"

#include <array>

namespace pelt::trade {

/// Widths of film that are on sale, rising.
inline constexpr std::array<Um, 6> common_widths{760 * um_per_mm,  1220 * um_per_mm,
                                                 1370 * um_per_mm, 1524 * um_per_mm,
                                                 1600 * um_per_mm, 2000 * um_per_mm};

/// The smallest rectangle of leftover film that is kept.
inline constexpr WorthKeeping worth_keeping{500 * um_per_mm, 300 * um_per_mm};

/// Film to grip on one side of a rectangle, where a file says how much it wants and no least.
inline constexpr Um least_margin = 15 * um_per_mm;
/// Less of it than this is worth a word.
inline constexpr Um comfortable_margin = 25 * um_per_mm;

/// Pieces of a divided panel are no narrower, where that can be.
inline constexpr Um least_piece = 150 * um_per_mm;

/// A strip of a divided panel narrower than this is hard to lay.
inline constexpr Um narrowest_strip = 100 * um_per_mm;

} // namespace pelt::trade
