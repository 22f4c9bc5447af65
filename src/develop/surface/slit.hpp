// SPDX-License-Identifier: MIT
// A surface cut open along straight lines of its layout. Inside develop/ only.
#pragma once

#include "develop/surface/flatten.hpp"
#include "model/polygon.hpp"

#include <array>
#include <optional>
#include <vector>

namespace pelt::develop {

/// From end to end, in the layout's frame.
using Slit = std::array<Point, 2>;

struct SlitSheet {
    std::vector<Sheet3> parts;    ///< every one a disc
    std::vector<double> areas;    ///< of the parts' own triangles, mm²
    double length_mm = 0;         ///< of the slits on the surface, lids left out
    double length_over_third = 0; ///< of that, above the lower third of the layout
    std::vector<Slit> edges;      ///< what is slit, in the layout, lids left out
};

/// Triangles are divided where a slit crosses them; points nearer to its line than a fifth of their
/// shortest side count as on it, so the cut strays from the line by no more than that. None where a
/// part would not be a disc.
std::optional<SlitSheet> slit_along(const Sheet3& sheet, const Flat& flat,
                                    const std::vector<Slit>& slits);

} // namespace pelt::develop
