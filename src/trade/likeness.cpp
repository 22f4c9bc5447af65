// SPDX-License-Identifier: MIT
#include "trade/likeness.hpp"

namespace pelt::trade {
namespace {

bool is_along_x(Heading heading) {
    return heading == Heading::left || heading == Heading::right;
}

/// The axes along the arrow and across it.
struct ByArrow {
    Axis along;
    Axis across;
};

ByArrow by_arrow(std::optional<LiesOn> lies) {
    if (lies == LiesOn::side)
        return {Axis::length, Axis::height};
    if (lies == LiesOn::front || lies == LiesOn::rear)
        return {Axis::height, Axis::width};
    return {Axis::length, Axis::width};
}

} // namespace

PanelAxes axes_of(const Panel& panel) {
    const ByArrow axes = by_arrow(panel.lies);
    const Heading unsaid = panel.lies == LiesOn::side ? Heading::left : Heading::up;
    return is_along_x(panel.forward.value_or(unsaid)) ? PanelAxes{axes.along, axes.across}
                                                           : PanelAxes{axes.across, axes.along};
}

bool keeps_its_size(const Panel& panel) {
    return panel.is == PanelKind::mirror_cap || panel.is == PanelKind::mirror_arm ||
           panel.is == PanelKind::door_handle || panel.is == PanelKind::fuel_flap;
}

} // namespace pelt::trade
