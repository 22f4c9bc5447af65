// SPDX-License-Identifier: MIT
// Some pieces of a problem as a problem of their own, on endless film like that of one stretch.
#pragma once

#include "nest/straight/block.hpp"

#include <span>

namespace pelt::nest::straight {

class Part {
public:
    /// `kinds`: one number a piece. Not possible when one of them may not lie on that film.
    Part(const Problem& whole, const Stretch& like, std::vector<std::size_t> kinds);

    bool possible() const { return possible_; }
    const Problem& problem() const { return problem_; }
    /// A block of this problem in the numbers of the whole one.
    Block in_whole(Block block) const;

private:
    bool add_kind(std::size_t kind, const Stretch& like);

    const Problem* whole_;
    Problem problem_;
    std::vector<std::size_t> kind_in_whole_;
    std::vector<std::vector<std::uint8_t>> orientation_in_whole_;
    bool possible_ = true;
};

/// The kinds of the pieces in a block, appended to `out`.
void list_pieces(const Block& block, std::vector<std::size_t>& out);

} // namespace pelt::nest::straight
