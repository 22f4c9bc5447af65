// SPDX-License-Identifier: MIT
// What is done at every edge and opening of a panel. Inside piece/ only.
#pragma once

#include "model/blank.hpp"
#include "model/vehicle.hpp"
#include "piece/allowed.hpp"

#include <string>
#include <vector>

namespace pelt::piece {

/// At an edge the film either goes past it (tuck or flush) or ends short of it.
struct EdgeWork {
    Um move = 0;
    Um stop = 0;        ///< not 0: move is 0
    bool flush = false; ///< a part stays on there: the move is the flush
};

struct OpeningWork {
    bool covered = false; ///< the film runs over it; else it is cut out
    Um move = 0;          ///< how far the film goes into it
    bool at_table = false;
    bool flush = false; ///< a part stays on there: the move is the flush
};

struct Work {
    std::vector<EdgeWork> edges;       ///< as the blank's edges
    std::vector<OpeningWork> openings; ///< as the panel's openings
    bool tuck_missing = false;         ///< at an edge neither panel nor film says how much
    bool tuck_of_film = false;         ///< at an edge the panel says nothing, and the film does
    std::vector<std::string> openings_without_tuck; ///< where neither says how much
    std::vector<std::string> bare_openings; ///< film that may hold metal must not cover them
};

/// Later entries override earlier ones, wrap and stop clearing each other; an edge without either
/// gets the wrap of the allowances. Where a part stays on, film goes `flush` under it.
Work work_on(const Panel& panel, const Blank& blank, const Allowed& allowed,
             const std::vector<std::string>& left_on);

} // namespace pelt::piece
