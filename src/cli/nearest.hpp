// SPDX-License-Identifier: MIT
// Which word was meant.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace pelt::cli {

/// At most three of the words that differ least from `typed`, the nearest first; equally near ones
/// in the order given. Empty when none is near. Letters put in, left out, changed, or swapped with
/// their neighbour count one each; a word is near up to a third of its letters, one at least.
std::vector<std::string> nearest(std::string_view typed, const std::vector<std::string>& words);

/// "did you mean 'a' or 'b'?", each with `before` in front; empty when there is none.
std::string did_you_mean(const std::vector<std::string>& words, std::string_view before = "");

} // namespace pelt::cli
