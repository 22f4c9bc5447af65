// SPDX-License-Identifier: MIT
// What a vehicle file may say about its size over all, about another vehicle that it is like, and
// about a diagonal that its readings are checked by. Order is the manual's.
#include "read/key_tables.hpp"

#include <span>

namespace pelt::read {
namespace {

using enum ValueKind;

constexpr double shortest_vehicle = 300;
constexpr double longest_vehicle = 30'000;
constexpr double longest_diagonal = 45'000;
constexpr double most_corners = 10'000;

constexpr Key like_keys[] = {
    {.in = In::vehicle,
     .name = "overall",
     .kind = map,
     .of = In::overall,
     .unstated = "not said: no other vehicle can be scaled from it",
     .text = "Sizes over all, of the vehicle papers: what a vehicle that is like this one is "
             "scaled by."},
    {.in = In::vehicle,
     .name = "like",
     .kind = text,
     .unstated = "every panel was measured",
     .text = "Another vehicle, whose panels are scaled to this one's 'overall' and are guessed "
             "then: a file in this file's folder or below, or the name of an installed one. What "
             "this file says of a panel replaces the other's; 'PANEL: no' says that there is "
             "none."},
    {.in = In::overall,
     .name = "length",
     .kind = length,
     .low = shortest_vehicle,
     .high = longest_vehicle,
     .unstated = "not known; with 'like' as the other's",
     .text = "From the foremost to the rearmost point."},
    {.in = In::overall,
     .name = "width",
     .kind = length,
     .low = shortest_vehicle,
     .high = longest_vehicle,
     .unstated = "not known; with 'like' as the other's",
     .text = "Without the mirrors."},
    {.in = In::overall,
     .name = "height",
     .kind = length,
     .low = shortest_vehicle,
     .high = longest_vehicle,
     .unstated = "not known; with 'like' as the other's",
     .text = "From the ground, without rails and aerial."},
    {.in = In::panel,
     .name = "diagonal",
     .kind = map,
     .of = In::diagonal,
     .text = "A taped distance between two corners of the outline, straight across: what the "
             "other readings are checked by, within the panel's 'tolerance' or 3 mm."},
    {.in = In::diagonal,
     .name = "from",
     .kind = count,
     .low = 1,
     .high = most_corners,
     .required = true,
     .text = "The number of the corner at one end."},
    {.in = In::diagonal,
     .name = "to",
     .kind = count,
     .low = 1,
     .high = most_corners,
     .required = true,
     .text = "The number of the corner at the other."},
    {.in = In::diagonal,
     .name = "length",
     .kind = length,
     .low = 1,
     .high = longest_diagonal,
     .required = true,
     .text = "How long it is."},
};

} // namespace

std::vector<Key> like_keys_of_vehicles() {
    const std::span<const Key> all(like_keys);
    return {all.begin(), all.end()};
}

} // namespace pelt::read
