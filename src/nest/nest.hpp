// SPDX-License-Identifier: MIT
// Filling rolls with pieces. Knows shapes, turns, demands and rolls; knows no prices, names, files.
#pragma once

#include "model/layout.hpp"
#include "model/piece.hpp"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace pelt::nest {

/// What the layout must respect besides the rolls.
struct Goal {
    CutBy by = CutBy::straight;
    Um gap = 0;           ///< contour cutting: least distance between two cut outlines
    Um ruler = um_per_mm; ///< straight cutting: sides and cut positions are whole steps
    std::optional<int>
        stages;              ///< straight cutting: how often film is turned on the table; none: any
    std::optional<Um> table; ///< straight cutting: longest film that the table takes
};

/// How hard to look, in work units, so that every machine does the same work.
struct Effort {
    int amount = 1;  ///< 1 … 100; 0: until the watch stops the search
    int threads = 1; ///< never changes the result
    std::uint64_t seed = 1;
};

/// How far a search has come.
struct Progress {
    Um best = 0;      ///< shortest length so far, 0 before there is one
    Um bound = 0;     ///< proven least length
    double share = 0; ///< of the effort, 0 … 1
};
/// Called from time to time, from one thread; false asks the search to stop with what it has.
using Watch = std::function<bool(const Progress&)>;

/// A layout, or the pieces (indices) that no roll can take.
struct Result {
    std::optional<Layout> layout;
    std::vector<std::size_t> misfits;
};

/// Places every copy of every piece. Pieces come in a canonical order; equal input gives equal
/// output for any number of threads unless `watch` stops the search. New rolls are used in the
/// order given, and only as many as are needed.
Result nest(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal,
            const Effort& effort, const Watch& watch);

} // namespace pelt::nest
