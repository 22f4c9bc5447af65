// SPDX-License-Identifier: MIT
// How the edges and openings of a piece are finished, for those who lay it.
#pragma once

#include "model/vehicle.hpp"

#include <string>
#include <vector>

namespace pelt {

/// The film is tucked `tuck` round the edge, or reaches `flush` under a part that stays on there,
/// or ends `stop` short of it. At most one of them is not 0.
struct EdgeFinish {
    std::string number; ///< "2-3"; "top" and so on for girth panels
    std::string name;   ///< `name:`, empty where there is none
    Point normal;       ///< outward, in the panel's drawing
    Um tuck = 0;
    Um flush = 0;
    Um stop = 0;
};

/// An opening that film does not run over. The film goes `tuck` into it, or `flush` to a part that
/// stays on there.
struct OpeningFinish {
    std::string name;
    bool at_table = false; ///< cut out there, not on the vehicle
    Um tuck = 0;
    Um flush = 0;
};

/// An opening that film runs over while its part is off. It is cut open when the part goes back.
struct CoveredOpening {
    std::string name;
    std::string part;
};

/// Of one piece of a panel.
struct PieceFinish {
    std::vector<EdgeFinish> edges; ///< in the order of the outline
    std::vector<OpeningFinish> openings;
    std::vector<CoveredOpening> covered;
};

} // namespace pelt
