// SPDX-License-Identifier: MIT
// What a plan has to tell beside its pieces: marks for what must be decided, notes for the rest.
#pragma once

#include "report/marks.hpp"
#include "report/numbers.hpp"
#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// Seams that the vehicle file does not ask for, a sentence each.
std::vector<std::string> added_seams(const Sheet& sheet, const Measures& measures);

/// The gravest first, each once: stretch beyond what the film gives or near it, the warnings of the
/// stages before, a length that is far from what is usual.
std::vector<Mark> marks_of(const Sheet& sheet, const Measures& measures);

/// What a mark had no room for, and what needs no decision: panels to be warmed, stretch that was
/// not checked, tucks, zones to keep clear, narrow margins, work for two.
std::vector<std::string> notes_of(const Sheet& sheet, const Measures& measures);

/// Which openings film runs over while their parts are off, by the numbers of the pieces; empty
/// where there are none.
std::string covered_openings(const Sheet& sheet);

} // namespace pelt::report
