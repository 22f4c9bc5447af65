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

/// Whether what the file calls rear doors closes the vehicle's rear face: on vans, by their body or
/// by a sliding door among the panels. (Nothing else has both sliding doors and rear doors.)
bool has_doors_in_the_rear(std::string_view body, const std::vector<Entry>& panels);

/// Fills `is` and `lies`; `panel.name` and `panel.sides` are known by then.
void read_what_it_is(const Fields& fields, bool doors_in_the_rear, Panel& panel, Context& context);

} // namespace pelt::read
