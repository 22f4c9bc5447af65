// SPDX-License-Identifier: MIT
// A finished part of a layout, as a value: a rectangle, or rectangles side by side.
#pragma once

#include "nest/straight/tree.hpp"

namespace pelt::nest::straight {

/// Children follow each other from the low side in `divided`; what they leave is free.
struct Block {
    std::array<Steps, 2> size{}; ///< along, across
    std::int32_t kind = nobody;  ///< of a piece; none where there are children
    std::uint8_t lie = 0;
    Direction2 divided = along;
    std::vector<Block> children;
    bool is_piece() const { return kind != nobody; }
    /// What the children leave free in the direction in which they follow each other.
    Steps slack() const;
};

/// On one stretch, the sections in their order from the stretch's start.
struct Filled {
    std::size_t stretch = 0;
    std::vector<Block> sections;
    Steps used() const;
};

/// A whole layout: stretches in their order, only those that hold something.
using Sheet = std::vector<Filled>;

Sheet sheet_of(const Tree& tree);

} // namespace pelt::nest::straight
