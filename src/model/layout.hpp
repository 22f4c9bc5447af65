// SPDX-License-Identifier: MIT
// Rolls, and pieces placed on them. Roll frame: x along from the free end, y across from the
// roll's lower edge (0 … width); the film's arrow is +x. Micrometres.
#pragma once

#include "model/piece.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace pelt {

/// A stretch of a roll that must not be used, from edge to edge unless `low`..`high` says less.
struct Flaw {
    Um from = 0;
    Um to = 0;
    std::optional<Um> low;
    std::optional<Um> high;
};

struct Roll {
    std::string name; ///< "new 1", "stock A"
    bool is_new = true;
    std::string batch; ///< empty: not known
    Um width = 0;
    Um trim = 0;
    std::optional<Um> available; ///< none: as long as is wanted
    bool arrow_known = true;     ///< false: takes no directed film
    std::vector<Flaw> flaws;
};

/// Where one piece lies: its shape's outline turned by `turn` about the piece frame's origin,
/// then moved by `at`.
struct Placement {
    std::size_t piece = 0; ///< index into the pieces of the job
    std::size_t copy = 0;  ///< index into that piece's ids
    std::size_t shape = 0; ///< index into that piece's shapes
    Turn turn;
    GridPoint at;
};

/// A straight cut, parallel to an axis, from edge to edge of the film that it divides.
struct Cut {
    GridPoint from;
    GridPoint to;
};

struct UsedRoll {
    std::size_t roll = 0;              ///< index into the rolls that were offered
    Um length = 0;                     ///< from the free end to the far side of the last piece
    std::vector<Placement> placements; ///< in the order in which they come free: numbers 1, 2, …
    std::vector<Cut> cuts;             ///< straight cutting only, in the order made
};

/// No layout of these pieces as cut, on new film of this width, can be shorter.
struct Bound {
    Um length = 0;
    std::string argument; ///< which argument gave it, in the trade's words
};

struct Layout {
    std::vector<UsedRoll> rolls;
    Bound bound;
    bool stopped = false; ///< ended by the callback or the clock, not by its own measure
    /// Proved: no layout of these pieces on such film is shorter that keeps the same rules (how
    /// often film is turned on the table, how much the table takes). The bound may lie lower.
    bool shortest = false;
};

/// Off all rolls together.
Um length_of(const Layout& layout);

} // namespace pelt
