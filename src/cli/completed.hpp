// SPDX-License-Identifier: MIT
// What may stand where on a command line, as the three shells have in common. Inside cli/ only.
#pragma once

#include "cli/options.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace pelt::cli {

/// What an operand can be: an installed vehicle or film, beside files that hold one; or any file.
enum class Operand { vehicle, film, file };
std::string_view name_of(Operand operand);

/// None: no operand may stand there.
struct Operands {
    std::vector<Operand> first;
    std::vector<Operand> later;
};
/// From how the usage line shows them: "VEHICLE... FILM".
Operands operands_of(const CommandRow& command);

/// The options that work for a command, with the choices that they have there.
std::vector<OptionRow> options_for(Command command);
/// Those that may stand before the command.
std::vector<OptionRow> options_before_commands();
/// "-o" and "--out", or one of them.
std::vector<std::string> spellings_of(const OptionRow& row);

/// A text between single quotes, as all three shells read it.
std::string quoted_for_shell(std::string_view text);

} // namespace pelt::cli
