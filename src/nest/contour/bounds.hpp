// SPDX-License-Identifier: MIT
// Lengths below which no layout can go.
#pragma once

#include "model/layout.hpp"
#include "model/piece.hpp"

#include <span>

namespace pelt::nest::contour {

/// The best proven bound for these pieces as cut, `gap` apart, on new film of this usable width:
/// the film taken off up to `rolls` rolls together. 0 for no pieces.
Bound bound_of(std::span<const Piece> pieces, Um usable_width, Um gap, std::size_t rolls);

} // namespace pelt::nest::contour
