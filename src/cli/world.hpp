// SPDX-License-Identifier: MIT
// What the program finds around it, as values, so that tests can invent it.
#pragma once

#include <functional>
#include <optional>
#include <string>

namespace pelt::cli {

struct World {
    /// An environment variable; none when it is not set.
    std::function<std::optional<std::string>(const char* name)> variable;
    bool input_is_terminal = false;
    bool output_is_terminal = false;
    bool errors_are_terminal = false;
    std::string folder_of_program; ///< where the running binary lies; empty: not known
};

/// Whether the locale's characters are UTF-8 (POSIX: LC_ALL, else LC_CTYPE, else LANG).
bool speaks_utf8(const World& world);

/// The world as it is.
World real_world();

} // namespace pelt::cli
