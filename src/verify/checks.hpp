// SPDX-License-Identifier: MIT
// The checks one by one; each adds a sentence a fault to `faults`. Inside verify/ only.
#pragma once

#include "model/plan.hpp"

#include <string>
#include <vector>

namespace pelt::verify {

using Sentences = std::vector<std::string>;

/// Indices lie within their lists, rings have points, coordinates and allowances are within the
/// range for which the arithmetic is exact, panels are developed: nothing else can be looked at
/// before.
bool sane(const Job& job, const Layout& layout, Sentences& faults);

/// No piece is of a panel whose sizes are guessed: film is cut by what was measured alone.
void check_measured(const Job& job, Sentences& faults);

/// Everything that the vehicles ask for is placed once, and nothing else.
void check_complete(const Job& job, const Layout& layout, Sentences& faults);

/// Outlines are well formed; film covers its panel as edges and openings ask, right way round, with
/// its laps; what is cut holds it with its margins or bleed; turns are those that its film may
/// have.
void check_pieces(const Job& job, Sentences& faults);

/// Turns, usable width, used length, availability, flaws, arrows; apart from one another.
void check_places(const Job& job, const Layout& layout, Sentences& faults);

/// Pieces that are not batch free come from one batch.
void check_batches(const Job& job, const Layout& layout, Sentences& faults);

/// Straight cutting: the listed cuts free every piece, in order, on whole steps of the ruler, with
/// no more turns of the film than the job allows, and no film longer than its table.
void check_cuts(const Job& job, const Layout& layout, Sentences& faults);

/// The bound lies between the pieces' area over the usable width and the new film's length.
void check_bound(const Job& job, const Layout& layout, Sentences& faults);

} // namespace pelt::verify
