// SPDX-License-Identifier: MIT
// The blanks of a cut sheet: what is written on it of the job, by hand or by `--fill`.
#pragma once

#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report {

struct Blanks {
    std::string check_code; ///< empty: not known
    std::string batch;      ///< of the film, where it is one and known
    std::string date;       ///< where no filling says it
    Fillings filled;
};
Blanks blanks_of(const Sheet& sheet);
Blanks blanks_of(const EstimateSheet& sheet);

/// "Check code: F4317F9B · color: ____ · batch: ____" and the other blanks, then a line for every
/// other word that was filled, in the order given.
std::vector<std::string> lines_with_blanks(const Blanks& blanks);

} // namespace pelt::report
