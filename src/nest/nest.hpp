// SPDX-License-Identifier: MIT
// Filling rolls with pieces. Knows shapes, turns, demands and rolls; knows no prices, names, files.
#pragma once

#include "model/layout.hpp"
#include "model/piece.hpp"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace pelt::nest {

/// What the layout must respect besides the rolls.
struct Goal {
    CutBy by = CutBy::straight;
    Um gap = 0;              ///< contour cutting: least distance between two cut outlines
    bool free_turns = false; ///< contour cutting: pieces of any direction lie at any millidegree,
                             ///< also beside the turns of their shapes
    Um ruler = um_per_mm;    ///< straight cutting: sides and cut positions are whole steps
    /// Straight cutting: how often the cuts through one part of the film change between across and
    /// along, the first cut across counted; one slit or cut more may trim a single piece. None:
    /// any.
    std::optional<int> stages;
    std::optional<Um> table; ///< straight cutting: longest film that the table takes
    /// Straight cutting, by piece and copy: its place in the order of laying, all different. Pieces
    /// lie in that order where it costs no film. Empty: no order.
    std::vector<std::vector<std::size_t>> laying;
    bool in_order =
        false; ///< the order of laying is a rule: each strip off the roll holds the next
};

/// What contour searches of one run have worked out about shapes and the next ones need not again.
/// It never changes a result; searches at the same time may share one.
class Memory;
std::shared_ptr<Memory> new_memory();

/// How hard to look, in work units, so that every machine does the same work.
struct Effort {
    int amount = 1;  ///< 1 … 100; 0: until the watch stops the search
    int threads = 1; ///< never changes the result
    std::uint64_t seed = 1;
    bool trial = false; ///< only so much as tells a good way to divide panels from a bad one
    std::shared_ptr<Memory> memory = nullptr; ///< may be none
    int part = 1; ///< along outlines: only one in so many of the amount's work
};

/// How far a search has come.
struct Progress {
    Um best = 0;                 ///< shortest length so far, 0 before there is one
    Um bound = 0;                ///< proven least length
    double share = 0;            ///< of the effort, 0 … 1
    std::string_view doing = {}; ///< what this search is for; whoever asks for it says so
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

/// What a layout takes of new film.
Um new_length(const Layout& layout, std::span<const Roll> rolls);

} // namespace pelt::nest
