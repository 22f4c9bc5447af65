// SPDX-License-Identifier: MIT
// The whole of every roll in one drawing.
#pragma once

#include "report/facts.hpp"
#include "report/numbers.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/strips.hpp"

#include <vector>

namespace pelt::report::paper {

/// Every roll to one scale, its numbers and its distances from the free end; in several rows where
/// that makes it larger in the room that the page has left. On a page of its own where that is
/// little.
void add_overview(Flow& flow, const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                  const std::vector<Strip>& strips, const Measures& measures,
                  const draw::Letters& letters);

/// How large the rolls come out in that room, as add_overview finds it before it draws.
double overview_scale(const Flow& flow, const Sheet& sheet, const std::vector<Strip>& strips,
                      const draw::Letters& letters);

} // namespace pelt::report::paper
