// SPDX-License-Identifier: MIT
// The checks one by one; each adds a sentence a fault to `faults`. Inside verify/ only.
#pragma once

#include "model/plan.hpp"

#include <string>
#include <vector>

namespace pelt::verify {

using Sentences = std::vector<std::string>;

/// "piece 'hood', centre, copy 1".
std::string called(const Job& job, const PieceId& id);

/// Indices are within their lists; nothing else can be checked before.
bool indices_hold(const Job& job, const Layout& layout, Sentences& faults);

/// Everything that the vehicles ask for is placed once, and nothing else.
void check_complete(const Job& job, const Layout& layout, Sentences& faults);

/// Cut outlines are well formed and hold what stays on; it covers the panel, right way round.
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
