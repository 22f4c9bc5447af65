// SPDX-License-Identifier: MIT
// The strips of a roll on pages: the drawing, its cuts, its pieces.
#pragma once

#include "report/facts.hpp"
#include "report/numbers.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/strips.hpp"

#include <vector>

namespace pelt::report::paper {

/// As many strips on a page, in the order of the roll, as can be drawn and listed there in a fair
/// size; a long or crowded strip has a page of its own, and a second one only where its lists do
/// not fit under the drawing. A page is upright or across, whichever draws its strips larger.
std::vector<draw::Picture> strip_pages(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                                       const std::vector<Strip>& strips, PageSize size,
                                       const Measures& measures, const draw::Letters& letters);

} // namespace pelt::report::paper
