// SPDX-License-Identifier: MIT
// Layouts that keep to the order of laying: every strip that is cut off the roll holds the pieces
// that are laid next.
#pragma once

#include "nest/straight/block.hpp"

#include <optional>

namespace pelt::nest::straight {

/// The best division of the order of laying into strips, each strip the shortest there is for its
/// pieces; strips of more pieces than is looked at are left out. None when the film does not
/// suffice, or a piece fits nowhere in its turn.
std::optional<Sheet> in_order(const Problem& problem, int threads);

} // namespace pelt::nest::straight
