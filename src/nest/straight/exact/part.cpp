// SPDX-License-Identifier: MIT
#include "nest/straight/exact/part.hpp"

#include <algorithm>
#include <limits>

namespace pelt::nest::straight {

Part::Part(const Problem& whole, const Stretch& like, std::vector<std::size_t> kinds)
    : whole_(&whole) {
    problem_.step = whole.step;
    problem_.stages = whole.stages;
    problem_.table = whole.table;
    Stretch endless = like;
    endless.from = 0;
    endless.along = std::numeric_limits<Steps>::max() / 4;
    endless.is_new = true;
    problem_.stretches = {endless};
    std::sort(kinds.begin(), kinds.end());
    for (const std::size_t kind : kinds) {
        if (kind_in_whole_.empty() || kind_in_whole_.back() != kind)
            possible_ = add_kind(kind, like) && possible_;
        problem_.kinds.back().members.emplace_back();
    }
}

bool Part::add_kind(std::size_t kind, const Stretch& like) {
    const Kind& original = whole_->kinds[kind];
    kind_in_whole_.push_back(kind);
    orientation_in_whole_.emplace_back();
    problem_.kinds.push_back({{}, original.directed, {}});
    for (std::size_t orientation = 0; orientation < original.orientations.size(); ++orientation)
        if (whole_->suits(original, original.orientations[orientation], like)) {
            problem_.kinds.back().orientations.push_back(original.orientations[orientation]);
            orientation_in_whole_.back().push_back(static_cast<std::uint8_t>(orientation));
        }
    return !problem_.kinds.back().orientations.empty();
}

Block Part::in_whole(Block block) const {
    for (Block& child : block.children)
        child = in_whole(std::move(child));
    if (block.is_piece()) {
        const auto kind = static_cast<std::size_t>(block.kind);
        block.orientation = orientation_in_whole_[kind][block.orientation];
        block.kind = static_cast<std::int32_t>(kind_in_whole_[kind]);
    }
    return block;
}

void list_pieces(const Block& block, std::vector<std::size_t>& out) {
    if (block.is_piece())
        out.push_back(static_cast<std::size_t>(block.kind));
    for (const Block& child : block.children)
        list_pieces(child, out);
}

} // namespace pelt::nest::straight
