// SPDX-License-Identifier: MIT
// A line along which film is divided. Piece frame. Inside piece/ only.
//
// A seam line is where the upper piece ends; the under piece runs `overlap` past it. Which one lies
// on top is told by how the panel stands on the vehicle (stand.hpp).
#pragma once

#include "model/vehicle.hpp"
#include "piece/stand.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::piece {

/// A line to divide along, in millimetres, at least two points.
struct Divide {
    std::vector<Point> points;
    bool added = false; ///< not one of the file's
    std::string label;  ///< "its seam line 2"; empty for an added one
};

/// The film on both sides of a line that was lengthened straight until it leaves everything.
struct DividedPlane {
    std::vector<Point> line; ///< lengthened, the upper side on its left
    Ring upper;
    Ring under;
    Ring under_lapping; ///< the under side grown by the overlap
};

/// `panel`: the box of the panel's outline. None when the lengthened line crosses itself.
std::optional<DividedPlane> divided(const Divide& line, const Box& around, Um overlap,
                                    const Stand& stand, const Box& panel);

/// The end of an axis whose piece lies on top at a line that divides it at `at`: 1 high, -1 low.
int end_on_top(const StandOnAxis& axis, double at_mm, double middle_mm);

} // namespace pelt::piece
