// SPDX-License-Identifier: MIT
// Words that people write for what files call otherwise. Inside read/ only.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace pelt::read {

/// The words of files that a word in small letters, with blanks, may stand for; empty: none known.
std::vector<std::string> meant_by(std::string_view word);

} // namespace pelt::read
