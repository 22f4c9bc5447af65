// SPDX-License-Identifier: MIT
// The rows of the table of options, one function a group. Inside cli/ only: use options().
#pragma once

#include "cli/options.hpp"

#include <vector>

namespace pelt::cli {

/// Those that lay out one job.
std::vector<Command> planning_commands();

std::vector<OptionRow> job_options();
std::vector<OptionRow> film_options();
std::vector<OptionRow> shop_options();
std::vector<OptionRow> search_options();
std::vector<OptionRow> output_options();
std::vector<OptionRow> everywhere_options();

} // namespace pelt::cli
