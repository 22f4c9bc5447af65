// SPDX-License-Identifier: MIT
// A line along which film is divided. Piece frame. Inside piece/ only.
//
// A seam line is where the upper piece ends; the under piece runs `overlap` past it. The lap's free
// edge faces rearward or, along a line that runs fore and aft, down: the forward or upper piece
// lies on top. Where neither is higher (a line fore and aft on a panel drawn with its nose up or
// down) the one to the left in the drawing does.
#pragma once

#include "model/vehicle.hpp"

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

/// None when the lengthened line crosses itself.
std::optional<DividedPlane> divided(const Divide& line, const Box& around, Um overlap,
                                    Heading heading);

} // namespace pelt::piece
