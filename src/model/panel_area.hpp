// SPDX-License-Identifier: MIT
// What one side of one panel takes of film, whole: before seams, overlaps and inlays, which only a
// cut sheet counts.
#pragma once

#include "model/blank.hpp"
#include "model/polygon.hpp"
#include "model/vehicle.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pelt {

/// Areas and size are of one copy.
struct PanelArea {
    std::string panel;
    Side side = Side::centre;
    int count = 1; ///< copies on this side, inner faces included
    double visible_mm2 = 0;
    Polygon wrapped = {};               ///< the film that stays on, in the panel's drawing
    std::optional<double> cut_mm2 = {}; ///< as it leaves the roll; none without a film
    StretchAsked stretch = {};
    std::optional<double> surface_mm2 = {};     ///< of a scan, in space
    std::shared_ptr<const StretchMap> map = {}; ///< of a scan
    std::optional<Heading> forward = {};        ///< none: the film lies any way
    bool guessed = false;                       ///< not measured, scaled from another vehicle
    std::vector<Point> outline = {};            ///< laid flat, mm, in the drawing of `wrapped`
    std::optional<Crown> crown = {};            ///< as measured
};

} // namespace pelt
