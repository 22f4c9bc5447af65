// SPDX-License-Identifier: MIT
// Whether a stream gets colour.
#pragma once

#include "cli/world.hpp"

#include <string_view>

namespace pelt::cli {

/// The first that applies: `--color`; NO_COLOR set and not empty (no-color.org); FORCE_COLOR or
/// CLICOLOR_FORCE not empty and not 0; TERM unset or "dumb"; whether that stream is a terminal.
bool wants_colour(std::string_view color_option, const World& world, bool stream_is_terminal);

} // namespace pelt::cli
