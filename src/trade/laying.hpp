// SPDX-License-Identifier: MIT
// The order in which panels are laid on the vehicle.
#pragma once

#include "model/panel_name.hpp"

#include <optional>

namespace pelt::trade {

/// Steps of a job, in their order.
enum class LayingStep { jambs, top, hood, rear, sides, plain, bumpers, small_parts };

struct LayingPlace {
    LayingStep step = LayingStep::plain;
    int within = 0; ///< the step, front to rear
};

/// A panel without a place of its own is laid with those that lie as it does.
LayingPlace laying_place(PanelKind is, std::optional<LiesOn> lies);

} // namespace pelt::trade
