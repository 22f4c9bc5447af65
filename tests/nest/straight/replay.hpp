// SPDX-License-Identifier: MIT
// An independent look at a straight layout: the cuts are made one after the other on a rectangle
// of film, and every piece must be one of the parts that are left.
#pragma once

#include "nest/nest.hpp"

#include <span>
#include <string>
#include <vector>

namespace pelt::test {

/// What is wrong with the layout, in sentences; empty when nothing is.
std::vector<std::string> faults_of(const Layout& layout, std::span<const Piece> pieces,
                                   std::span<const Roll> rolls, const nest::Goal& goal);

/// All new film of the layout.
Um new_length(const Layout& layout, std::span<const Roll> rolls);

} // namespace pelt::test
