// SPDX-License-Identifier: MIT
// Rectangles wider than half the film never lie side by side, so on a roll their lengths add up.
// Inside order/ only.
#pragma once

#include "order/fill.hpp"

#include <optional>
#include <vector>

namespace pelt::order {

/// A copy of a piece that is wider than half the film's usable width however it lies.
struct WidePiece {
    std::size_t piece = 0;
    std::size_t copy = 0;
    Um along = 0; ///< at least
};

/// Of those copies the wide ones, the longest first. Straight cutting only: outlines can mesh.
std::vector<WidePiece> wide_pieces(const Job& job, const Copies& copies);

/// How lengths can be divided among rolls.
struct Divided {
    bool possible = false;          ///< true also where it would take too long to know
    std::vector<std::size_t> rolls; ///< by piece; empty where it is not known
};
Divided divided(const std::vector<WidePiece>& pieces, const std::vector<Um>& rolls);

/// The copies that fall to one of those rolls.
Copies copies_on_roll(const Job& job, const std::vector<WidePiece>& pieces, const Divided& ways,
                      std::size_t roll);

} // namespace pelt::order
