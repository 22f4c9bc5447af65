// SPDX-License-Identifier: MIT
// What shells complete, from the tables of commands and options: the tables inside the scripts
// share/completion.SHELL.in.
#pragma once

#include <string>

namespace pelt::cli {

/// Functions of bash: which options a command has, what the value of one is, what its operands are.
std::string tables_for_bash();
/// Functions of zsh: the specifications that _arguments takes, a function a command.
std::string tables_for_zsh();
/// Lines of fish: `complete` for every command and option.
std::string tables_for_fish();

} // namespace pelt::cli
