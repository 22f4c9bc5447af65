// SPDX-License-Identifier: MIT
// The points that a tape has read, and the curve through them. Panel frame: x right, y up, mm.
#pragma once

#include "model/vehicle.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::report {

/// How far up, down or along a girth was read.
struct GirthReading {
    std::string word;
    double mm = 0;
};

/// `number`: of a corner; none for a point that an arc goes through and for a girth's.
struct OutlinePoint {
    Point at;
    std::optional<int> number;
    std::optional<GirthReading> girth = std::nullopt;
};

struct NamedPlace {
    std::string name;
    Point at; ///< the middle of an edge
};

struct MeasuredOutline {
    std::vector<OutlinePoint> points; ///< none: nothing was read with a tape
    std::vector<Point> curve;         ///< closed
    std::vector<NamedPlace> names;
    std::vector<std::vector<Point>> tapes; ///< where the tape lay across a panel
    Point low;
    Point high;
    double width() const { return high.x - low.x; }
    double height() const { return high.y - low.y; }
};

/// As typed: corners keep their order and numbers. Between stations girths run straight or, where
/// the file says so, smoothly; stations rise along the spine.
MeasuredOutline measured_outline(const Panel& panel);
MeasuredOutline measured_outline(const OutlineForm& form);

} // namespace pelt::report
