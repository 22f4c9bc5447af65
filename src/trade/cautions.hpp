// SPDX-License-Identifier: MIT
// What calls for a caution. Common practice, no source, throughout; the texts are report's.
#pragma once

#include "model/length.hpp"

#include <string_view>

namespace pelt::trade {

/// A piece longer than this on one side is laid by two people.
inline constexpr Um two_people_above = 1300 * um_per_mm;

/// Whether what a zone is kept clear for (a word of the key `keep clear`) measures or sends through
/// what covers it, so that metal in a film disturbs it.
bool measures_or_sends(std::string_view keep_clear);

/// Whether it must be seen, so that no film may cover it.
bool must_be_seen(std::string_view keep_clear);

/// Whether film without metal may lie over it, where the vehicle's maker allows it.
bool works_through_film(std::string_view keep_clear);

} // namespace pelt::trade
