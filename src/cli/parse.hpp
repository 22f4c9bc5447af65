// SPDX-License-Identifier: MIT
// From the words of a command line to what they say. Touches nothing in the world: names of files
// stay names.
#pragma once

#include "cli/options.hpp"
#include "model/fault.hpp"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace pelt::cli {

/// What a command line says. Every value has passed `complaint_about`.
struct Arguments {
    std::optional<Command> command;
    std::vector<std::string> operands;
    std::map<Opt, std::vector<std::string>> values; ///< a flag has one text for every time

    std::size_t count(Opt option) const;
    /// The only value, or none.
    std::optional<std::string> value(Opt option) const;
    /// The value, or what holds without the option.
    std::string value_or_initial(Opt option) const;
    /// All names of all times.
    std::vector<std::string> names(Opt option) const;
};

/// `args` without the program's name. Everything that is wrong goes to `faults`, severity usage;
/// a command line that asks for help or the version needs nothing else to be right.
Arguments parse(const std::vector<std::string>& args, Faults& faults);

} // namespace pelt::cli
