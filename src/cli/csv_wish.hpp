// SPDX-License-Identifier: MIT
// What `--csv` asks for. Inside cli/ only.
#pragma once

#include "cli/formats.hpp"

namespace pelt::cli {

/// Gives every CSV among the targets the dialect that is asked for. A wish that no CSV follows is a
/// fault.
void set_dialect(const Arguments& arguments, std::vector<Target>& targets, Faults& faults);

} // namespace pelt::cli
