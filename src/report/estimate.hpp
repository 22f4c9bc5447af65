// SPDX-License-Identifier: MIT
// How much film a vehicle takes that was not measured, in the formats of a cut sheet. There is
// nothing in it to cut by, and every format says that it is an estimate.
#pragma once

#include "model/estimate.hpp"
#include "model/fault.hpp"
#include "report/document.hpp"
#include "report/numbers.hpp"
#include "report/page_head.hpp"
#include "report/paper_size.hpp"

#include <string>
#include <utility>
#include <vector>

namespace pelt::report {

/// What is written into the blanks of a page: word and text.
using Fillings = std::vector<std::pair<std::string, std::string>>;

struct EstimateSheet {
    Estimate estimate;
    Faults warnings = {};
    Unit unit = Unit::mm;  ///< for people's formats
    std::string date = {}; ///< as the user gave it; empty: a blank to write in
    Fillings filled = {};  ///< other blanks
};

/// "13.2 m to 15.4 m, most likely 14.1 m".
std::string range_text(const LengthRange& range, const Measures& measures);
/// "price by 16 m"; "no price can be named" where too many drawn vehicles fit on no roll.
std::string what_to_price_by(const Estimate& estimate, const Measures& measures);
/// The names of the guessed panels.
std::vector<std::string> names_of_guessed(const Estimate& estimate);

/// What the estimate takes for granted, a sentence or two each.
std::vector<std::string> notes_of(const EstimateSheet& sheet, const Measures& measures);

Document estimate_page(const EstimateSheet& sheet);
std::string to_table(const EstimateSheet& sheet, const TextStyle& style = {});
std::string to_markdown(const EstimateSheet& sheet);

/// Schema pelt.cut/1 with no rolls, seams and other ways to cut; "notes" are what it takes for
/// granted; "guess" holds "panels", "length_mm" with "low", "middle" and
/// "high" (null: longer than any roll takes), "as_scaled_mm", "sure_percent" and "measure_first".
std::string to_json(const EstimateSheet& sheet);

/// A head and one row: estimate vehicle film by demonstration roll_width_mm guessed_panels low_mm
/// middle_mm high_mm as_scaled_mm sure_percent order_mm total currency measure_first. New columns
/// may be added at the end.
std::string to_csv(const EstimateSheet& sheet);

/// The page's figures, and the range as a bar.
std::string to_svg(const EstimateSheet& sheet);
std::string to_pdf(const EstimateSheet& sheet, Paper paper);

} // namespace pelt::report
