// SPDX-License-Identifier: MIT
// Minutes against the ranges of the trade (common practice, no source).
#include "trade/labor.hpp"

#include <doctest/doctest.h>

using pelt::Minutes;
using pelt::PanelKind;
namespace trade = pelt::trade;

namespace {

/// A panel of usual size: its area, its tucked edges, and the range of the trade.
struct Usual {
    PanelKind is;
    double area_m2;
    double tucked_m;
    double low;
    double high;
};

// Sizes are invented, of a middling car.
constexpr Usual panels[] = {
    {PanelKind::hood, 1.25, 4.4, 50, 90},        {PanelKind::roof, 1.6, 5.1, 50, 90},
    {PanelKind::front_door, 0.75, 3.5, 45, 75},  {PanelKind::rear_door, 0.65, 3.2, 40, 70},
    {PanelKind::front_fender, 0.45, 3, 35, 60},  {PanelKind::quarter, 0.9, 4, 60, 110},
    {PanelKind::trunk_lid, 0.7, 3.5, 50, 90},    {PanelKind::hatch, 1.1, 4.5, 70, 120},
    {PanelKind::front_bumper, 1.6, 7, 120, 240}, {PanelKind::rear_bumper, 1.4, 6, 90, 180},
    {PanelKind::sill, 0.35, 3.8, 25, 45},
};

} // namespace

TEST_CASE("what is reckoned for a known panel lies a quarter up the range") {
    for (const Usual& panel : panels) {
        const Minutes time = trade::time_on(panel.is).value();
        CHECK(time.low == panel.low);
        CHECK(time.high == panel.high);
        CHECK(time.taken == panel.low + (panel.high - panel.low) / 4);
    }
    CHECK_FALSE(trade::time_on(PanelKind::plain_panel));
}

TEST_CASE("by area and edges alone panels of usual size fall into the ranges") {
    for (const Usual& panel : panels) {
        const Minutes time = trade::time_by_shape(panel.is, panel.area_m2, panel.tucked_m);
        CAPTURE(panel.low);
        CHECK(time.taken >= panel.low);
        CHECK(time.taken <= panel.high);
    }
}

TEST_CASE("inlays and the heat at edges keep to the ranges of the trade") {
    CHECK(trade::an_inlay.low == 10);
    CHECK(trade::an_inlay.high == 25);
    CHECK(trade::post_heat_a_metre.low == 1);
    CHECK(trade::post_heat_a_metre.taken == 1.5);
    CHECK(trade::post_heat_a_metre.high == 2);
}
