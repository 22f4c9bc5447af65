// SPDX-License-Identifier: MIT
// The job as the search sees it: forms to lie down, ways in which they may lie, and bays of film.
#pragma once

#include "model/layout.hpp"
#include "nest/contour/fields.hpp"
#include "nest/contour/vec.hpp"
#include "nest/nest.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace pelt::nest::contour {

/// One way for a kind of piece to lie: a form, turned.
struct Option {
    std::uint32_t form = 0; ///< index into the fields' forms
    int quarters = 0;       ///< of the form, counter-clockwise
    std::size_t shape = 0;  ///< index into the piece's shapes
    Turn turn;              ///< of that shape
    Span box;               ///< of the turned form, about the piece's origin
    Vec centre;             ///< of the box
    double size = 0;        ///< half the box's shorter side
};

/// Pieces that are alike. Kinds are in a canonical order of their shapes.
struct Kind {
    std::size_t piece = 0; ///< index into the pieces of the job
    std::uint32_t first_option = 0;
    std::uint32_t options = 0;
    double area = 0; ///< of the first shape, holes subtracted, square micrometres
    double hull = 0; ///< of the hull
    bool needs_arrow = false;
};

/// A stretch of film without a full-width flaw. Rolls stand one behind another in the search's own
/// frame: its x is a roll's x plus `shift`, its y the roll's y.
struct Bay {
    std::size_t roll = 0;
    double shift = 0;
    Span film; ///< usable; `film.high.x` may be endless
    bool arrow = true;
};

/// A part of a roll that must stay bare, as an item that never moves.
struct Obstacle {
    std::uint32_t option = 0;
    Vec at;
};

/// Everything that does not change while searching.
struct Problem {
    std::vector<Option> options;
    std::vector<Kind> kinds;
    std::vector<std::uint32_t> items; ///< kind of every item
    std::vector<Bay> bays;
    std::vector<Obstacle> obstacles;
    std::shared_ptr<const Fields> fields;
    double area = 0;         ///< of all items
    double proven_least = 0; ///< no layout takes less film; 0: nothing is known
    bool repeats = false;    ///< a pattern: what is shortened is its period, and it has no ends

    /// The period of a scene before `end`; 0: nothing repeats.
    double period(double end) const { return repeats ? end : 0; }
    const Kind& kind_of(std::size_t item) const { return kinds[items[item]]; }
};

/// Whether a flaw leaves nothing of the usable width beside it.
bool is_full_width(const Flaw& flaw, const Roll& roll);

/// Where an option's origin may be within a bay; nothing when it does not fit.
std::optional<Span> room(const Option& option, const Bay& bay);

/// Whether items of a kind may lie in a bay at all, as far as the film's arrow goes.
inline bool admits(const Bay& bay, const Kind& kind) {
    return bay.arrow || !kind.needs_arrow;
}
/// Whether one fits there, in one of its ways to lie.
bool takes(const Problem& problem, const Bay& bay, const Kind& kind);

/// The longest that an item of a kind takes along the film, in any of its ways to lie.
double longest_along(const Problem& problem, const Kind& kind);
/// The longest that any item takes.
double longest_along(const Problem& problem);

/// Pieces that fit no bay in any of their ways to lie are left out and listed in `misfits`.
Problem prepare(std::span<const Piece> pieces, std::span<const Roll> rolls, Um gap,
                const std::shared_ptr<Memory>& memory, std::vector<std::size_t>& misfits);

} // namespace pelt::nest::contour
