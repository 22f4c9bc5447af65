// SPDX-License-Identifier: MIT
// What the straight search works on: rectangles with a demand, and stretches of film between
// flaws, all in whole steps of the ruler.
#pragma once

#include "nest/nest.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace pelt::nest::straight {

/// A length in whole ruler steps.
using Steps = std::int64_t;

/// One way in which a rectangle may lie.
struct Orientation {
    Steps along = 0;
    Steps across = 0; ///< rounded down where it fills a usable width that is no whole step
    Um across_um = 0; ///< exactly
    Steps area() const { return along * across; }
    friend auto operator<=>(const Orientation&, const Orientation&) = default;
};

/// One piece to cut: where in the caller's lists it stands.
struct Member {
    PieceId id;
    std::size_t piece = 0;
    std::size_t copy = 0;
    std::size_t place = 0; ///< in the order of laying; 0 for all where there is none
};

/// Pieces that are rectangles of one size with one freedom to turn.
struct Kind {
    std::vector<Orientation>
        orientations;            ///< at least one; none at least as large as another both ways
    bool directed = false;       ///< needs a roll whose arrow is known
    std::vector<Member> members; ///< in the order of laying
    std::size_t demand() const { return members.size(); }
    Steps least_area() const;
};

/// Film between two places where it must not be used, over the whole usable width.
struct Stretch {
    std::size_t roll = 0; ///< index into the rolls that were offered
    Um from = 0;          ///< from the roll's free end, a whole number of steps
    Steps along = 0;      ///< as long as can be needed where the roll is endless
    Steps across = 0;
    Um across_um = 0;
    bool is_new = true;
    bool arrow_known = true;
    /// New film only: how much new film lies before it on this and on earlier rolls.
    Steps reach_before = 0;
};

struct Problem {
    Um step = um_per_mm;
    std::vector<Kind> kinds;          ///< the largest first; a total order that no name enters
    std::vector<Stretch> stretches;   ///< stock first, then new rolls in their order
    int stages = 0;                   ///< how often film is turned on the table
    std::optional<Steps> table;       ///< longest section
    std::vector<std::size_t> misfits; ///< pieces that no stretch takes
    std::size_t pieces() const;
    /// Whether the rectangle may lie so on that stretch (were the stretch empty and long enough).
    bool suits(const Kind& kind, const Orientation& orientation, const Stretch& stretch) const;
};

/// No limit to the turns on the table.
inline constexpr int any_stages = 1'000'000;

/// Pieces of equal rectangles become one kind; the order in which they come does not matter.
Problem problem_of(std::span<const Piece> pieces, std::span<const Roll> rolls, const Goal& goal);

} // namespace pelt::nest::straight
