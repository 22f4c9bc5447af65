// SPDX-License-Identifier: MIT
// What a panel is and how it lies, by its keys or its name. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/context.hpp"
#include "read/fields.hpp"
#include "read/yaml.hpp"

#include <string_view>
#include <vector>

namespace pelt::read {

/// Where what the file calls rear doors is: in the vehicle's rear face on vans, by their body or by
/// a sliding door among the panels, or by a cargo wall where nothing tells of a car or a pickup; else
/// in its sides. In doubt, and taken to be in the sides, where nothing tells.
enum class RearDoors { in_the_sides, in_the_rear, in_doubt };
RearDoors where_rear_doors_are(std::string_view body, const std::vector<Entry>& panels);

/// Fills `is` and `lies`; `panel.name` and `panel.sides` are known by then.
void read_what_it_is(const Fields& fields, RearDoors rear_doors, Panel& panel, Context& context);

} // namespace pelt::read
