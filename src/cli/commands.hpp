// SPDX-License-Identifier: MIT
// The table of commands. Parsing, help and the manual are made from it.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace pelt::cli {

enum class Command { cut, area, compare, quote, strip, check, list };

/// One command to copy, and what it does.
struct Example {
    std::string_view line;
    std::string_view what;
};

struct CommandRow {
    Command id;
    std::string_view name;
    std::string_view operands; ///< as the usage line shows them
    int least_operands = 0;
    std::optional<int> most_operands; ///< none: as many as are given
    std::string_view line;            ///< one line, for lists
    std::string_view text;            ///< whole sentences, for its help and the manual
    std::vector<Example> examples;
    bool works = false; ///< false: refused as not known yet, and left out of help and manual
};

/// Every command that is or will be, in the order in which help lists them.
const std::vector<CommandRow>& commands();

const CommandRow& row_of(Command command);
const CommandRow* command_named(std::string_view name);

} // namespace pelt::cli
