// SPDX-License-Identifier: MIT
// A finished part of a layout, as a value: a rectangle, or rectangles side by side.
#pragma once

#include "nest/straight/tree.hpp"

namespace pelt::nest::straight {

/// Children follow each other from the low side in `divided`, each as thick as the block; what
/// they leave at the high side is free. A child is a piece or is divided the other way.
struct Block {
    std::array<Steps, 2> size{}; ///< along, across
    std::int32_t kind = no_node; ///< of a piece; none where there are children
    std::uint8_t orientation = 0;
    Axis divided = along;
    std::vector<Block> children;
    bool is_piece() const { return kind != no_node; }
    /// What the children leave free in the direction in which they follow each other.
    Steps slack() const;
};

Block piece_block(const Problem& problem, std::size_t kind, std::size_t orientation);
/// The least block that holds both, side by side across the film, or one behind the other.
Block put_beside(Block low, Block high);
Block put_behind(Block near, Block far);
/// The least block that holds all of them, one after the other in that direction: each is cut off
/// by itself. There must be more than one.
Block in_line(std::vector<Block> blocks, Axis direction);

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
