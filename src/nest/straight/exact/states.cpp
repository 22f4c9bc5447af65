// SPDX-License-Identifier: MIT
#include "nest/straight/exact/states.hpp"

#include <algorithm>

namespace pelt::nest::straight {
namespace {

constexpr State word_size = 64;

} // namespace

States::States(const std::vector<Kind>& kinds) {
    State weight = 1;
    std::size_t pieces = 0;
    for (const Kind& kind : kinds) {
        weight_.push_back(weight);
        radix_.push_back(static_cast<State>(kind.demand() + 1));
        weight *= radix_.back();
        pieces += kind.demand();
    }
    all_ = weight - 1;
    list_by_pieces(pieces);
    make_blocks();
}

void States::list_by_pieces(std::size_t pieces) {
    std::vector<std::uint32_t> sizes(static_cast<std::size_t>(all_) + 1, 0);
    layers_.assign(pieces + 2, 0);
    std::size_t last = 0;
    for (State s = 1; s <= all_; ++s) {
        if (last + 1 < kinds() && s == weight_[last + 1])
            ++last;
        sizes[s] = sizes[s - weight_[last]] + 1;
        ++layers_[sizes[s] + 1];
    }
    for (std::size_t i = 1; i < layers_.size(); ++i)
        layers_[i] += layers_[i - 1];
    by_pieces_.resize(all_);
    std::vector<std::size_t> next = layers_;
    for (State s = 1; s <= all_; ++s)
        by_pieces_[next[sizes[s]]++] = s;
}

void States::make_blocks() {
    while (low_kinds_ < kinds() && block_ * radix_[low_kinds_] <= word_size)
        block_ *= radix_[low_kinds_++];
    for (State low = 0; low < block_; ++low) {
        Walk below = walk(low, 0);
        do
            below_[low] |= std::uint64_t{1} << below.now();
        while (below.next());
    }
}

std::span<const State> States::group(std::size_t from) const {
    const auto layer = std::upper_bound(layers_.begin(), layers_.end(), from);
    std::size_t to = from + 1;
    while (to < *layer && by_pieces_[to] / block_ == by_pieces_[from] / block_)
        ++to;
    return {by_pieces_.data() + from, to - from};
}

Walk States::walk(State s, std::size_t from_kind) const {
    Walk walk;
    const State unit = from_kind < kinds() ? weight_[from_kind] : 1;
    for (std::size_t k = from_kind; k < kinds(); ++k)
        if (const auto most = static_cast<State>(copies(s, k)); most > 0)
            walk.add_digit(weight_[k] / unit, most);
    return walk;
}

double States::count(const std::vector<Kind>& kinds) {
    double count = 1;
    for (const Kind& kind : kinds)
        count *= static_cast<double>(kind.demand() + 1);
    return count;
}

double States::splits(const std::vector<Kind>& kinds) {
    double splits = 0.5;
    for (const Kind& kind : kinds)
        splits *= static_cast<double>((kind.demand() + 1) * (kind.demand() + 2)) / 2;
    return splits;
}

void StateSet::clear(const States& states) {
    block_ = states.block();
    const std::size_t words = states.all() / block_ + 1;
    words_.assign(words, 0);
    turned_.assign(words, 0);
}

void StateSet::add(State s) {
    const State low = s % block_;
    words_[s / block_] |= std::uint64_t{1} << low;
    turned_[s / block_] |= std::uint64_t{1} << (63 - low);
}

} // namespace pelt::nest::straight
