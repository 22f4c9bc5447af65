// SPDX-License-Identifier: MIT
// The sentences about a command line that is wrong. Inside cli/ only.
#pragma once

#include "cli/options.hpp"
#include "model/fault.hpp"

#include <string>
#include <vector>

namespace pelt::cli {

/// A fault of severity usage.
Fault usage(std::string what, std::string remedy);

Fault unknown_command(const std::string& word);
Fault unknown_option(const std::string& word, Command command);
Fault option_before_command(const std::string& word);
Fault not_known_yet(const OptionRow& option, Command command);
Fault of_other_command(const OptionRow& option, Command command);

/// Options without their value, values for flags, and words that look like options and are none.
void check_spelling(const std::vector<std::string>& args, Faults& faults);

/// As many operands as the command takes, standard input at most once.
void check_operands(const std::vector<std::string>& operands, Command command, Faults& faults);

} // namespace pelt::cli
