// SPDX-License-Identifier: MIT
// The straight cuts of a roll as a person makes them: what to divide, where to set the ruler from
// which edge, what comes free.
#pragma once

#include "report/facts.hpp"

#include <vector>

namespace pelt::report {

/// The edge of the film in hand from which the ruler is set; `cut_end` is its end towards the free
/// end, once that has been cut off.
enum class RulerFrom { free_end, cut_end, near_edge };

/// Film without pieces in it.
struct FilmAway {
    Box usable; ///< less the roll edges that are not used
    Box whole;  ///< as it lies in the hand
};

struct CutStep {
    int number = 0; ///< 1, 2, … on this roll
    bool across = false;
    Um ruler = 0; ///< from that edge to the cut
    RulerFrom from = RulerFrom::free_end;
    enum class Divides { roll, strip, part };
    Divides of = Divides::roll; ///< the roll itself, a strip of its whole width, a part of one
    Um running = 0;             ///< of a cut across: from the roll's free end to it
    std::vector<int> divides;   ///< numbers of the pieces within what is divided
    std::vector<int> frees;     ///< pieces that are finished by this cut
    std::vector<FilmAway> falls_away;
    bool frees_roll_edge = false;    ///< a roll edge that is not used falls away
    bool takes_off_the_roll = false; ///< ends the used length
};

/// Replays the cuts of one used roll. A cut that divides nothing is a ProgramError: `verify` passes
/// no such plan.
std::vector<CutStep> cut_steps(const Plan& plan, const std::vector<PlacedPiece>& pieces,
                               std::size_t used_roll);

} // namespace pelt::report
