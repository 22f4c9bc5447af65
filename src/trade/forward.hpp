// SPDX-License-Identifier: MIT
// The way of the film's arrow on a panel for which none is given.
#pragma once

#include "model/vehicle.hpp"

#include <optional>

namespace pelt::trade {

/// Towards the nose; on a front face down, on a rear face up (the frame of model/vehicle.hpp; that
/// film is laid so is common practice, no source). None where the drawing may show either way.
std::optional<Heading> usual_forward(std::optional<LiesOn> lies, Sides sides);

} // namespace pelt::trade
