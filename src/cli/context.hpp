// SPDX-License-Identifier: MIT
// What every command is given. Inside cli/ only.
#pragma once

#include "cli/messages.hpp"
#include "cli/parse.hpp"
#include "cli/world.hpp"

#include <string>

namespace pelt::cli {

struct Context {
    const Arguments& arguments;
    const World& world;
    const Messages& messages;
};

/// Prints a whole result on standard output; tells it when that fails. An exit status.
int print(const std::string& text, const Messages& messages);

/// One function a command; each returns an exit status.
int run_cut(const Context& context);
int run_area(const Context& context);
int run_strip(const Context& context);
int run_compare(const Context& context);
int run_quote(const Context& context);
int run_check(const Context& context);
int run_list(const Context& context);

} // namespace pelt::cli
