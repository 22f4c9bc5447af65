// SPDX-License-Identifier: MIT
// Areas of panels, and the stretch that they ask of the film: before seams, overlaps and inlays,
// which only a cut sheet counts.
#pragma once

#include "model/blank.hpp"
#include "model/fault.hpp"
#include "model/polygon.hpp"
#include "model/vehicle.hpp"
#include "report/document.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report {

/// One side of one panel; areas and size are of one copy.
struct AreaRow {
    std::string panel;
    Side side = Side::centre;
    int count = 1; ///< copies on this side, inner faces included
    double visible_mm2 = 0;
    Polygon wrapped;               ///< the film that stays on, in the panel's drawing
    std::optional<double> cut_mm2; ///< as it leaves the roll; none without a film
    StretchAsked stretch;
};

struct AreaSheet {
    std::string vehicle;
    std::string film; ///< empty: none was given
    bool demonstration = false;
    std::optional<double> stretch_limit; ///< the film's, on a panel, in percent
    std::vector<AreaRow> rows;
    Faults warnings = {};
    Unit unit = Unit::mm;
};

/// Schema pelt.area/1, in mm. Extra keys: vehicle, film, demonstration, warnings.
std::string to_json(const AreaSheet& sheet);
/// panel side count visible_mm2 wrapped_mm2 cut_mm2 along_x_mm along_y_mm stretch_percent
/// stretch_is; one row a side, no total.
std::string to_csv(const AreaSheet& sheet);
Document area_report(const AreaSheet& sheet);

} // namespace pelt::report
