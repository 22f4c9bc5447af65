// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::read {

class Context;

/// How many letters must be put in, left out, changed or swapped with their neighbour to make one
/// text of the other (the restricted distance of Damerau, Communications of the ACM 7, 1964).
int letters_apart(std::string_view a, std::string_view b);

/// The known word that the user is likely to have meant, or an empty text.
std::string nearest(std::string_view word, const std::vector<std::string>& known);

/// The known words that a word is likely to have been meant for: one that is a slip of the letters
/// away, those that mean the same, or the nearest by its letters.
std::vector<std::string> likely_meant(std::string_view word,
                                      const std::vector<std::string>& known);

/// "did you mean 'x'?" when a known word is near by its letters or its meaning, else "LEAD 'a', 'b' or
/// 'c'" with the known words, the most alike first where not all are told.
std::string did_you_mean(std::string_view word, const std::vector<std::string>& known,
                         std::string_view lead, std::string_view last_joint = "or");

/// The same for one of many faults of a file: the known words are told in their own order where the
/// file has had its share of comparing.
std::string did_you_mean(std::string_view word, const std::vector<std::string>& known,
                         std::string_view lead, Context& context,
                         std::string_view last_joint = "or");

/// How many letters did_you_mean compares at most.
std::size_t letters_to_compare(std::string_view word, const std::vector<std::string>& known);

/// "'a', 'b' or 'c'".
std::string listed(const std::vector<std::string>& words, std::string_view last_joint = "or");

} // namespace pelt::read
