// SPDX-License-Identifier: MIT
// Text set in lines. Inside cli/ only.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace pelt::cli {

inline constexpr std::size_t help_width = 80;

/// The words of `text` in lines of at most `help_width` columns, each ending with a newline. The
/// first line stands behind `first` (or below it when there is no room), the others behind
/// `indent` blanks.
std::string wrapped(std::string_view text, std::string_view first, std::size_t indent);

} // namespace pelt::cli
