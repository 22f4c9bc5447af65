// SPDX-License-Identifier: MIT
// The names that may stand on a command line, for shells to complete.
#pragma once

#include "cli/context.hpp"

namespace pelt::cli {

/// `pelt list --names`: installed vehicles and films. With NAME, a vehicle: what options may name
/// of it. A line a name: its kind, a tab, the name. An exit status.
int list_names(const Context& context);

} // namespace pelt::cli
