// SPDX-License-Identifier: MIT
// Jobs whose kinds repeat: patterns for most of the pieces, a search for the rest.
#pragma once

#include "nest/straight/block.hpp"

#include <optional>

namespace pelt::nest::straight {

struct Many {
    Sheet sheet;
    Steps length() const;
    bool stopped = false;
};

/// The same job several times over: once, and that as often as it takes. None where the demands
/// have no common divisor, or where the film does not suffice so.
std::optional<Many> lay_out_multiples(const Problem& problem, const Effort& effort,
                                      const Watch& watch);

/// None where kinds do not repeat, or where the film does not suffice for what this tried.
std::optional<Many> lay_out_many(const Problem& problem, const Effort& effort, const Watch& watch);

} // namespace pelt::nest::straight
