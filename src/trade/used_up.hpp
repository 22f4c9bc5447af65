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

/// What it can do to whoever works with it.
enum class Hazard { none, blade, solvent };

struct Consumable {
    std::string_view name; ///< as the shop file's prices call it
    std::string_view unit; ///< empty: pieces
    UsedBy by;
    double low; ///< for one of what drives it
    double high;
    double priced_for = 1; ///< units that one price is for
    Hazard hazard = Hazard::none;
};

std::span<const Consumable> consumables();

/// Of the one with that name; none for a name that is not in the table.
Hazard hazard_of(std::string_view name);

} // namespace pelt::trade
