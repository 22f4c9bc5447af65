// SPDX-License-Identifier: MIT
// Free turns (`--turns any`): which angles are worth trying. The search itself knows a list of
// turns for every piece; the list is made anew around the angles of the best layout, in ever finer
// steps.
#pragma once

#include "model/layout.hpp"
#include "model/piece.hpp"

#include <span>
#include <vector>

namespace pelt::nest::contour {

/// Whether any piece may lie in turns that its shapes do not list.
bool any_lies_freely(std::span<const Piece> pieces);

/// The pieces; those that may lie freely and that no roll takes in a listed turn, being too narrow
/// or too short, get the turns in which they lie askew.
std::vector<Piece> with_askew_turns(std::span<const Piece> pieces, std::span<const Roll> rolls);

/// Goes round the pieces that may lie freely, some at a time, since a field is made for every pair
/// of forms; after every full round in finer steps.
class Turning {
public:
    explicit Turning(std::span<const Piece> pieces) : pieces_(pieces) {}

    /// The pieces with the turns in which they lie in the layout; the next few of them also with
    /// the same a step to either side, and with those that lay a long side along or across the
    /// film. Nothing when there are too many forms without that.
    std::vector<Piece> next(const Layout& layout);

private:
    std::span<const Piece> pieces_;
    std::size_t at_ = 0; // pieces passed so far, in all rounds
};

} // namespace pelt::nest::contour
