// SPDX-License-Identifier: MIT
// Brackets and quotes of a YAML text that do not pair. Inside read/ only.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace pelt::read {

/// The first bracket or quote that has no partner.
struct Unpaired {
    enum class Kind { open_quote, open_bracket, stray_closing, wrong_closing };
    Kind kind = Kind::open_bracket;
    std::size_t byte = 0;    ///< where it stands
    std::size_t partner = 0; ///< wrong_closing: the bracket that is open there
};

/// Follows flow brackets, quotes, comments and plain texts as YAML does. Meant for texts that are
/// not YAML: it looks for a likely slip, it proves nothing.
std::optional<Unpaired> find_unpaired(std::string_view text);

} // namespace pelt::read
