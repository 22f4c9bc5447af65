// SPDX-License-Identifier: MIT
// Contour cutting: pieces are cut along their own outlines, wherever they lie.
#pragma once

#include "nest/nest.hpp"

namespace pelt::nest::contour {

/// As `nest::nest`, for `CutBy::contour`.
Result nest(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch);

} // namespace pelt::nest::contour
