// SPDX-License-Identifier: MIT
// What to buy, how long the layout is and where the film goes, in words.
#pragma once

#include "report/numbers.hpp"
#include "report/report.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace pelt::report {

std::string roll_name(const Sheet& sheet, std::size_t used_roll);

/// The lines to be seen from afar: one for each length to buy.
std::vector<std::string> what_to_order(const Sheet& sheet, const Measures& measures);
/// "15 m × 1524 mm.": the same once more, in short.
std::string order_in_a_line(const Sheet& sheet, const Measures& measures);
/// Needed, spare, left over, price; what comes from stock.
std::vector<std::string> about_the_order(const Sheet& sheet, const Measures& measures);
/// Face, arrow and free end; flaws.
std::vector<std::string> how_the_film_lies(const Sheet& sheet, const Measures& measures);
/// Where the cuts across the whole roll lie, a sentence a roll.
std::vector<std::string> cuts_across_the_roll(const Sheet& sheet, const Measures& measures);
/// Length, what no layout can be shorter than, and the usual length where this is one.
std::vector<std::string> length_figures(const Sheet& sheet, const Measures& measures);
/// Where the film goes: on the vehicle, trimmed off, left over. Each figure is rounded by itself,
/// so the rows may differ from the total by half a hundredth each.
Table area_table(const Sheet& sheet, const Measures& measures);

} // namespace pelt::report
