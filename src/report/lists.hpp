// SPDX-License-Identifier: MIT
// The lists of a cut sheet.
#pragma once

#include "report/cut_steps.hpp"
#include "report/numbers.hpp"
#include "report/report.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace pelt::report {

/// Boxes to tick, in the order of laying: number, panel, side, cut and finished size, where it is.
Table laying_table(const Sheet& sheet, const Measures& measures);
/// The same with what stays on the vehicle and the stretch it asks: the one list of a printed sheet.
Table laying_table_in_full(const Sheet& sheet, const Measures& measures);
/// One roll's straight cuts: what to set, from where, what comes free.
Table cuts_table(const Sheet& sheet, std::size_t used_roll, const Measures& measures);
/// The same of some of its steps, with boxes to tick and what is left on the roll afterwards.
Table cuts_to_tick(const Sheet& sheet, std::size_t used_roll, const std::vector<CutStep>& steps,
                   const Measures& measures);
/// How to read the one and the other.
std::string how_to_set_the_ruler();
std::string how_to_tick_the_cuts();
/// By number: where each piece lies, how it is turned, what it asks of the film.
Table pieces_table(const Sheet& sheet, const Measures& measures);
/// How to read the stretch in that table.
std::string stretch_note(const Sheet& sheet);

} // namespace pelt::report
