// SPDX-License-Identifier: MIT
// Many copies of few kinds: sections that are worth repeating, and how often to repeat them.
#pragma once

#include "nest/straight/block.hpp"

#include <vector>

namespace pelt::nest::straight {

struct Repeated {
    std::vector<Block> sections;   ///< in full; they hold no more of a kind than is wanted
    std::vector<std::size_t> left; ///< by kind: copies in none of them
};

/// All of it new film of one width, so that a section may lie on any stretch that is long enough.
bool is_one_kind_of_film(const Problem& problem);

/// Whether kinds repeat so often that patterns pay.
bool kinds_repeat(const Problem& problem);

/// Sections of columns of pieces (Gilmore & Gomory 1965, Oper. Res. 13, three stages), for film
/// like that of the first stretch, by column generation; each as often as the linear program uses
/// it, rounded down.
Repeated repeated_sections(const Problem& problem);

} // namespace pelt::nest::straight
