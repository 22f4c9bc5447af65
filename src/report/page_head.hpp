// SPDX-License-Identifier: MIT
// How a page begins: its title, and what must not be overlooked.
#pragma once

#include "report/document.hpp"

#include <string>

namespace pelt::report {

inline constexpr const char* not_measured = "ESTIMATE, NOT MEASURED";
inline constexpr const char* invented_data = "DEMONSTRATION: INVENTED DATA";

/// Beside the title that it is an estimate, or that its data are invented; where it is both, the
/// latter below.
Document page_head(const std::string& title, bool guessed, bool demonstration);

} // namespace pelt::report
