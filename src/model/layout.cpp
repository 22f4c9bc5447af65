// SPDX-License-Identifier: MIT
#include "model/layout.hpp"

namespace pelt {

Um length_of(const Layout& layout) {
    Um sum = 0;
    for (const UsedRoll& used : layout.rolls)
        sum += used.length;
    return sum;
}

} // namespace pelt
