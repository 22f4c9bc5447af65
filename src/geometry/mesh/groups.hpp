// SPDX-License-Identifier: MIT
// Things that are joined two by two, and which of them hang together: a disjoint-set forest with
// path halving (R. Tarjan, J. van Leeuwen, J. ACM 31 (1984) 245, from memory), nearly linear in
// all joins.
#pragma once

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <vector>

namespace pelt::geometry {

class Groups {
public:
    /// So many things, each by itself.
    explicit Groups(std::size_t count) : above_(count) {
        std::iota(above_.begin(), above_.end(), 0);
    }

    /// The least thing of its group.
    int first_of(int thing) {
        while (above(thing) != thing)
            thing = above(thing) = above(above(thing));
        return thing;
    }

    void join(int a, int b) {
        const auto [low, high] = std::minmax({first_of(a), first_of(b)});
        above(high) = low;
    }

private:
    int& above(int thing) { return above_[static_cast<std::size_t>(thing)]; }

    std::vector<int> above_;
};

} // namespace pelt::geometry
