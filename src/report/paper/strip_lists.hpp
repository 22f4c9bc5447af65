// SPDX-License-Identifier: MIT
// What stands under the drawing of a strip, besides its cuts.
#pragma once

#include "report/document.hpp"
#include "report/facts.hpp"
#include "report/numbers.hpp"
#include "report/paper/strips.hpp"

#include <string>
#include <vector>

namespace pelt::report::paper {

/// Its pieces, with what to write on the backing, and the seams between them.
Document lists_of_strip(const Sheet& sheet, const std::vector<PlacedPiece>& pieces,
                        const Strip& strip, const Measures& measures);

/// How its two columns are meant, once for all pages.
std::string what_to_write_on_the_backing();

} // namespace pelt::report::paper
