// SPDX-License-Identifier: MIT
#include "nest/straight/block.hpp"

namespace pelt::nest::straight {
namespace {

Block block_of(const Tree& tree, std::int32_t i) {
    const Node& node = tree[i];
    Block block{node.size, node.kind, node.lie, node.divided, {}};
    for (std::int32_t c = node.first; c != nobody; c = tree[c].next)
        block.children.push_back(block_of(tree, c));
    return block;
}

} // namespace

Steps Block::slack() const {
    Steps rest = size[divided];
    for (const Block& child : children)
        rest -= child.size[divided];
    return rest;
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
