// SPDX-License-Identifier: MIT
#include "cli/colour.hpp"

namespace pelt::cli {
namespace {

bool is_set(const World& world, const char* name) {
    return !world.variable(name).value_or("").empty();
}

bool is_forced(const World& world, const char* name) {
    return is_set(world, name) && world.variable(name) != "0";
}

} // namespace

bool wants_colour(std::string_view color_option, const World& world, bool stream_is_terminal) {
    if (color_option == "always")
        return true;
    if (color_option == "never" || is_set(world, "NO_COLOR"))
        return false;
    if (is_forced(world, "FORCE_COLOR") || is_forced(world, "CLICOLOR_FORCE"))
        return true;
    if (!is_set(world, "TERM") || world.variable("TERM") == "dumb")
        return false;
    return stream_is_terminal;
}

} // namespace pelt::cli
