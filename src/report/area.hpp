// SPDX-License-Identifier: MIT
// Areas of panels, and the stretch that they ask of the film: before seams, overlaps and inlays,
// which only a cut sheet counts.
#pragma once

#include "model/fault.hpp"
#include "model/panel_area.hpp"
#include "report/document.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report {

struct AreaSheet {
    std::string vehicle;
    std::string film; ///< empty: none was given
    bool demonstration = false;
    std::optional<double> stretch_limit; ///< the film's, on a panel, in percent
    std::vector<PanelArea> rows;
    Faults warnings = {};
    Unit unit = Unit::mm;
};

/// Schema pelt.area/1, in mm. Extra keys: vehicle, film, demonstration, warnings.
std::string to_json(const AreaSheet& sheet);
/// panel side count visible_mm2 wrapped_mm2 cut_mm2 along_x_mm along_y_mm stretch_percent
/// stretch_is natural_stretch_percent bound_stretch_percent stretch_at_most_percent surface_mm2
/// verdict guessed; one row a side, no total.
std::string to_csv(const AreaSheet& sheet);
Document area_report(const AreaSheet& sheet);
std::string to_table(const AreaSheet& sheet, const TextStyle& style = {});
std::string to_markdown(const AreaSheet& sheet);

/// Every scanned panel's blank with its stretch in eight greys that print in black and white, the
/// place of the largest stretch, the way it pulls, the film arrow, a scale in percent; one
/// millimetre a user unit. What was not scanned is named below.
std::string to_svg(const AreaSheet& sheet);

} // namespace pelt::report
