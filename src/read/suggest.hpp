// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace pelt::read {

/// How many letters must be put in, left out, changed or swapped with their neighbour to make one
/// text of the other (the restricted distance of Damerau, Communications of the ACM 7, 1964).
int letters_apart(std::string_view a, std::string_view b);

/// The known word that the user is likely to have meant, or an empty text.
std::string nearest(std::string_view word, const std::vector<std::string>& known);

/// "did you mean 'x'?" when a known word is near, else "LEAD 'a', 'b' or 'c'" with the first known
/// words.
std::string did_you_mean(std::string_view word, const std::vector<std::string>& known,
                         std::string_view lead, std::string_view last_joint = "or");

/// "'a', 'b' or 'c'".
std::string listed(const std::vector<std::string>& words, std::string_view last_joint = "or");

} // namespace pelt::read
