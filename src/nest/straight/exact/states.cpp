// SPDX-License-Identifier: MIT
#include "nest/straight/exact/states.hpp"

namespace pelt::nest::straight {

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
    std::vector<std::size_t> sizes(static_cast<std::size_t>(weight), 0);
    layers_.assign(pieces + 2, 0);
    for (State s = 1; s < weight; ++s) {
        for (std::size_t k = 0; k < kinds.size(); ++k)
            sizes[s] += copies(s, k);
        ++layers_[sizes[s] + 1];
    }
    for (std::size_t i = 1; i < layers_.size(); ++i)
        layers_[i] += layers_[i - 1];
    by_pieces_.resize(weight - 1);
    std::vector<std::size_t> next = layers_;
    for (State s = 1; s < weight; ++s)
        by_pieces_[next[sizes[s]]++] = s;
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

} // namespace pelt::nest::straight
