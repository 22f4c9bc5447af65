// SPDX-License-Identifier: MIT
// The search for where to divide a scanned panel. Inside develop/ only.
#pragma once

#include "develop/surface/slit.hpp"
#include "model/division.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace pelt::develop {

/// A surface and its layout, lower left at 0, drawn as the panel is.
struct LaidSheet {
    const Sheet3& sheet;
    const Flat& flat;
};

/// The cheapest way (trade::SeamCost) of the fewest pieces in which no piece asks more than `limit`
/// (a share) of the film: ways are tried on the coarse sheet by rising cost, and what holds there
/// is tried again on the fine one. Relief cuts compete with seams of two pieces. None where nothing
/// of what is tried (up to eight pieces) holds on the fine sheet. The same for every machine, at
/// most some hundred coarse trials and six fine ones.
std::optional<Division> divided_within(double limit, const LaidSheet& coarse, const LaidSheet& fine,
                                       Point peak,
                                       const std::vector<std::vector<Point>>& own_lines);

/// The same slits on one sheet: the least stretch of the part that asks most. None where a part is
/// no disc, less than a fiftieth of the whole, cannot be laid flat, or would lie over itself.
struct Judged {
    int pieces = 0;
    double stretch = 0;
    double length_mm = 0;
    std::vector<Slit> edges = {}; ///< what is slit, in the layout
};
/// Gives up, with a stretch above `enough`, as soon as a part asks more.
std::optional<Judged> judged(const LaidSheet& laid, const std::vector<Slit>& slits, double enough);

} // namespace pelt::develop
