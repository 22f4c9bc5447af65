// SPDX-License-Identifier: MIT
#include "trade/forward.hpp"

namespace pelt::trade {

std::optional<Heading> usual_forward(std::optional<LiesOn> lies, Sides sides) {
    if (lies == LiesOn::front)
        return Heading::down;
    if (lies == LiesOn::rear)
        return Heading::up;
    if (sides == Sides::left || sides == Sides::both)
        return Heading::left;
    return sides == Sides::right ? std::optional(Heading::right) : std::nullopt;
}

} // namespace pelt::trade
