// SPDX-License-Identifier: MIT
// Where the pieces of a panel meet, as seen on one of them.
#pragma once

#include "report/facts.hpp"

#include <vector>

namespace pelt::report::draw {

/// The stretches of other pieces' edges that lie on this piece at a lap, in the roll's frame where
/// the piece lies.
std::vector<pelt::Ring> lap_lines(const Job& job, const PlacedPiece& p);

} // namespace pelt::report::draw
