// SPDX-License-Identifier: MIT
// The same vehicles on several films or widths, side by side.
#pragma once

#include "report/report.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report {

/// One film or width: a sheet, or why there is none.
struct Compared {
    Film film; ///< with the width that was tried
    std::optional<Sheet> sheet;
    std::string why_not; ///< one sentence, where there is no sheet
};

struct Comparison {
    std::string vehicle;
    bool demonstration = false;
    std::vector<Compared> rows; ///< in the order asked for
    Unit unit = Unit::mm;
};

/// Schema pelt.compare/1, in mm: rows of film, roll_width_mm, length_mm, bound_mm, waste_percent,
/// order_mm, total, currency, pieces, seams_added, over_stretch, why_not; null where there is no
/// sheet.
std::string to_json(const Comparison& comparison);
/// film roll_width_mm length_mm bound_mm waste_percent order_mm total currency pieces seams_added
/// over_stretch why_not.
std::string to_csv(const Comparison& comparison);
Document compare_report(const Comparison& comparison);

} // namespace pelt::report
