// SPDX-License-Identifier: MIT
#include "nest/straight/block.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

Block block_of(const Tree& tree, std::int32_t i) {
    const Node& node = tree[i];
    Block block{node.size, node.kind, node.orientation, node.divided, {}};
    for (std::int32_t c = node.first; c != no_node; c = tree[c].next)
        block.children.push_back(block_of(tree, c));
    return block;
}

/// Makes a block as thick as its neighbours: the new film is free.
Block thickened(Block block, Axis d, Steps size) {
    if (block.size[d] == size)
        return block;
    if (!block.is_piece() && block.divided == d) {
        block.size[d] = size;
        return block;
    }
    Block out;
    out.size = block.size;
    out.size[d] = size;
    out.divided = d;
    out.children.push_back(std::move(block));
    return out;
}

/// A block without free film at its high side can give its children to a block around it.
void append(Block& out, Block block, Steps thickness) {
    const Axis o = other(out.divided);
    block = thickened(std::move(block), o, thickness);
    if (block.is_piece() || block.divided == o) {
        out.children.push_back(std::move(block));
        return;
    }
    for (Block& child : block.children)
        append(out, std::move(child), thickness);
}

Block joined(Block low, Block high, Axis d) {
    const Axis o = other(d);
    Block out;
    out.divided = d;
    out.size[d] = low.size[d] + high.size[d];
    out.size[o] = std::max(low.size[o], high.size[o]);
    append(out, std::move(low), out.size[o]);
    append(out, std::move(high), out.size[o]);
    return out;
}

} // namespace

Steps Block::slack() const {
    Steps rest = size[divided];
    for (const Block& child : children)
        rest -= child.size[divided];
    return rest;
}

Block piece_block(const Problem& problem, std::size_t kind, std::size_t orientation) {
    const Orientation& size = problem.kinds[kind].orientations[orientation];
    return {{size.along, size.across},
            static_cast<std::int32_t>(kind),
            static_cast<std::uint8_t>(orientation),
            along,
            {}};
}

Block put_beside(Block low, Block high) {
    return joined(std::move(low), std::move(high), across);
}

Block put_behind(Block near, Block far) {
    return joined(std::move(near), std::move(far), along);
}

Block in_line(std::vector<Block> blocks, Axis direction) {
    const Axis o = other(direction);
    Block out;
    out.divided = direction;
    for (const Block& block : blocks) {
        out.size[direction] += block.size[direction];
        out.size[o] = std::max(out.size[o], block.size[o]);
    }
    for (Block& block : blocks)
        out.children.push_back(thickened(std::move(block), o, out.size[o]));
    return out;
}

Steps Filled::used() const {
    Steps sum = 0;
    for (const Block& section : sections)
        sum += section.size[along];
    return sum;
}

Sheet sheet_of(const Tree& tree) {
    Sheet sheet;
    for (std::size_t i = 0; i < tree.problem().stretches.size(); ++i) {
        const Block whole = block_of(tree, tree.root(i));
        if (!whole.children.empty())
            sheet.push_back({i, whole.children});
    }
    return sheet;
}

} // namespace pelt::nest::straight
