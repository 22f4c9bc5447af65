// SPDX-License-Identifier: MIT
// Vehicles that are like others, from the command line. Inside cli/ only.
#pragma once

#include "cli/world.hpp"
#include "read/read.hpp"

#include <string>

namespace pelt::cli {

/// Finds the vehicle that another one is like among those that are installed.
read::FindInstalled installed_vehicles(const World& world);

/// The vehicle scaled to "L,W,H", lengths in its own unit; its name says so then.
read::Reading<Vehicle> scaled_to(Vehicle vehicle, const std::string& size);

} // namespace pelt::cli
