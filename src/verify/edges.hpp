// SPDX-License-Identifier: MIT
// What the vehicle and the film ask at every edge and opening of a panel. Found anew from the
// entries. Inside verify/ only.
#pragma once

#include "model/plan.hpp"

#include <vector>

namespace pelt::verify {

/// The film goes `move` past the edge, or ends `stop` short of it (then move is 0).
struct AtEdge {
    Um move = 0;
    Um stop = 0;
};

/// The film runs over the opening, or goes `move` into it and is cut out.
struct AtOpening {
    bool covered = false;
    Um move = 0;
};

struct Asked {
    std::vector<AtEdge> edges;       ///< as the blank's edges
    std::vector<AtOpening> openings; ///< as the blank's openings
    Um farthest_move = 0;
    Um deepest_stop = 0;
};

Asked asked_of(const Job& job, const Panel& panel, const Blank& blank);

/// The panel's own allowance before the film's.
Um overlap_of(const Job& job, const Panel& panel);
Um bleed_of(const Job& job, const Panel& panel);
Handling handling_of(const Job& job, const Panel& panel);
Direction direction_of(const Job& job, const Panel& panel);

} // namespace pelt::verify
