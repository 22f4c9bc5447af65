// SPDX-License-Identifier: MIT
#include "model/vehicle.hpp"

#include <algorithm>

namespace pelt {

std::string_view name_of(Side side) {
    switch (side) {
    case Side::left:
        return "left";
    case Side::right:
        return "right";
    case Side::centre:
        return "centre";
    }
    return "centre";
}

std::vector<Side> sides_of(Sides sides) {
    switch (sides) {
    case Sides::left:
        return {Side::left};
    case Sides::right:
        return {Side::right};
    case Sides::both:
        return {Side::left, Side::right};
    case Sides::centre:
        return {Side::centre};
    }
    return {Side::centre};
}

std::string_view name_of(Heading heading) {
    switch (heading) {
    case Heading::right:
        return "right";
    case Heading::up:
        return "up";
    case Heading::left:
        return "left";
    case Heading::down:
        return "down";
    }
    return "down";
}

std::string_view name_of(Direction direction) {
    switch (direction) {
    case Direction::one_way:
        return "one-way";
    case Direction::two_way:
        return "two-way";
    case Direction::any:
        return "any";
    }
    return "any";
}

bool is_guessed(const Vehicle& vehicle) {
    return std::any_of(vehicle.panels.begin(), vehicle.panels.end(),
                       [](const Panel& panel) { return panel.guessed; });
}

} // namespace pelt
