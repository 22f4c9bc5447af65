// SPDX-License-Identifier: MIT
#pragma once

#include "report/numbers.hpp"
#include "report/report.hpp"

#include <string>
#include <vector>

namespace pelt::report {

/// Something that the person must know or decide before cutting.
struct Finding {
    std::string panel; ///< empty: about the job
    std::string text;
    friend bool operator==(const Finding&, const Finding&) = default;
};

/// The first lines of the sheet: seams that the vehicle file does not ask for.
std::vector<Finding> added_seams(const Sheet& sheet, const Measures& measures);

/// Panels that ask more stretch than the film file says it gives.
std::vector<Finding> over_the_stretch_limit(const Sheet& sheet);

/// Everything else, those among them, each once, the gravest first: stretch over the film's limit,
/// the warnings of the stages before, narrow margins, what was not checked, zones to keep clear.
/// What several panels have in common is one finding when `together`, else one a panel.
std::vector<Finding> other_findings(const Sheet& sheet, const Measures& measures,
                                    bool together = true);

} // namespace pelt::report
