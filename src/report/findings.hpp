// SPDX-License-Identifier: MIT
#pragma once

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

/// The warnings, each once, in the order in which the sheet shows them.
std::vector<Finding> findings_of(const Sheet& sheet);

} // namespace pelt::report
