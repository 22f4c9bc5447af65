// SPDX-License-Identifier: MIT
// The film that a panel asks for, found anew from the measured blank and the vehicle's entries: the
// curve of its tucks, the strips of its stops, what is cut out. No curve is made into an outline;
// whether a place is wanted is told by how often the curves wind around it. Panel's drawing, on
// the grid. Inside verify/ only.
#pragma once

#include "verify/edges.hpp"
#include "verify/rim.hpp"

#include <vector>

namespace pelt::verify {

/// The grid point nearest to a place in millimetres.
GridPoint nearest(Point p);

class Wanted {
public:
    Wanted(const Panel& panel, const Blank& blank, const Asked& asked);

    /// Film with its tucks and stops, whatever is cut out of it.
    bool in_sheet(GridPoint p) const;
    /// Film that stays on the vehicle.
    bool stays_on(GridPoint p) const { return in_sheet(p) && !in_any(cut_out_, p); }
    /// Cut out at the table, less nothing for the bleed.
    bool cut_at_table(GridPoint p) const { return in_any(at_table_, p); }

    /// Every curve; where film that stays on begins and ends, one of them runs.
    std::vector<const Rim*> rims() const;

private:
    static bool in_any(const std::vector<Rim>& rims, GridPoint p);

    Rim tucked_;
    Rim stops_;
    std::vector<Rim> cut_out_;
    std::vector<Rim> at_table_;
};

} // namespace pelt::verify
