// SPDX-License-Identifier: MIT
// Leftover film that is worth a place on the shelf.
#pragma once

#include "report/json_text.hpp"
#include "report/numbers.hpp"
#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report {

struct Offcut {
    std::string name; ///< a remnant of a roll from stock keeps its name
    std::string film;
    Um width = 0;
    Um length = 0;
    Um trim = 0;
    std::string batch;
    bool arrow_known = true;
    std::vector<Flaw> flaws; ///< from its own free end and near edge
    CostOfLength cost;       ///< what stays on a roll is worth what the roll was; else 0
};

/// What stays on the rolls, and in straight cutting what the cuts let fall, where it is at least as
/// large as the film file asks.
std::vector<Offcut> offcuts_of(const Sheet& sheet);

/// An entry of `stock`, as pelt-stock(5) has it.
std::string stock_entry(const Offcut& offcut, const Film& film, const Measures& measures);

Json to_json(const Offcut& offcut, int money_digits);

} // namespace pelt::report
