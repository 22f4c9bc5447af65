// SPDX-License-Identifier: MIT
// What --help and --version print, made from the tables.
#pragma once

#include "cli/commands.hpp"

#include <string>

namespace pelt::cli {

/// `pelt --help`.
std::string main_help();
/// `pelt COMMAND --help`.
std::string help_of_command(Command command);
/// What `pelt` alone says.
std::string short_help();
/// First line "pelt x.y.z".
std::string version_text();

/// "x.y.z".
std::string version();

} // namespace pelt::cli
