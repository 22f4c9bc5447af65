// SPDX-License-Identifier: MIT
// What is used up, by what drives it. Common practice, no source: taken from what a five-door
// hatchback of about 12 m² uses, divided by what it has of each.
#pragma once

#include <array>
#include <span>
#include <string_view>

namespace pelt::trade {

enum class UsedBy {
    area,       ///< m² covered
    old_film,   ///< m² of film that comes off
    pieces,     ///< pieces laid
    hard_edges, ///< m of edge whose tuck asks more than the film gives
    cut_out,    ///< m cut on the vehicle
    clips,      ///< clips that come off
    badges,
};

struct Consumable {
    std::string_view name; ///< as the shop file's prices call it
    std::string_view unit; ///< empty: pieces
    UsedBy by;
    double low; ///< for one of what drives it
    double high;
    double priced_for = 1; ///< units that one price is for
};

std::span<const Consumable> consumables();

} // namespace pelt::trade
