// SPDX-License-Identifier: MIT
// Lengths within sentences, so that the sentence can be told in any unit.
#pragma once

#include "model/length.hpp"

#include <string>
#include <string_view>

namespace pelt {

/// How a length in a sentence is rounded: to whole millimetres or eighths of an inch, up (what is
/// needed), down (what holds), to the nearest; finely: to tenths of those or hundredths of an inch.
enum class Told { up, down, nearest, finely };

/// A length to stand in a sentence, between marks that no name can hold (control characters).
std::string marked(Um length, Told told);
std::string marked_mm(double mm, Told told);

/// The sentence with its lengths in the unit: "1480 mm", "148.0 cm", "1.480 m"; "58 3/8 in" for
/// inches, feet and yards.
std::string in_unit(std::string_view sentence, Unit unit);

} // namespace pelt
