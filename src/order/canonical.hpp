// SPDX-License-Identifier: MIT
// The order in which pieces go to the search: by shape, never by name or place in the file, so
// that neither changes the sheet's length. Inside order/ only.
#pragma once

#include "model/piece.hpp"

#include <vector>

namespace pelt::order {

/// Sorts by size and shape; pieces of one shape keep the order of their ids.
void sort_canonically(std::vector<Piece>& pieces);

/// Whether pieces come before others by their shapes alone, compared one after the other; neither
/// way where they are alike.
bool come_before(std::vector<Piece> pieces, std::vector<Piece> others);

} // namespace pelt::order
