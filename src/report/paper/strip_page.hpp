// SPDX-License-Identifier: MIT
// One strip of a roll on one page: the drawing, its cuts, its pieces.
#pragma once

#include "report/facts.hpp"
#include "report/numbers.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/strips.hpp"

#include <cstddef>
#include <vector>

namespace pelt::report::paper {

/// Upright or across, whichever draws the strip larger. A second page only where the lists do not
/// fit beside a drawing of fair size.
std::vector<draw::Picture> strip_pages(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                                       const std::vector<Strip>& strips, std::size_t which,
                                       PageSize size, const Measures& measures,
                                       const draw::Letters& letters);

} // namespace pelt::report::paper
