// SPDX-License-Identifier: MIT
// What turning the film round the edges asks of it. Inside piece/ only.
#pragma once

#include "model/blank.hpp"
#include "model/film.hpp"
#include "model/vehicle.hpp"
#include "piece/edge_work.hpp"

#include <vector>

namespace pelt::piece {

/// Looks for where a tuck of width w asks more than the film gives on an edge: on a hollow edge of
/// radius r the film is stretched by w / (r - w), on a bulging one gathered by w / (r + w) (trade
/// rule: the film's rim has the length of the circle on which it started). Radii are those of arcs,
/// of finely divided edges from the turning over the tuck's width. Sharp corners are not looked at:
/// there the film is cut in. Remarks on every such edge and the longest tuck that holds on it, once
/// for hollow edges and once for bulging ones, which gather film that is worked in with heat; warns
/// of hollow ones that ask above a quarter more, and of bulging ones that gather above 20 %, those
/// of door handles excepted. Nothing is said when the film's file gives no limit.
void check_tucks(const Panel& panel, const Blank& blank, const Work& work, const Film& film,
                 Faults& faults);

/// Which of the blank's edges have such a tuck; none where the film's file gives no limit.
std::vector<bool> edges_over_the_limit(const Blank& blank, const Work& work, const Film& film);

/// Warns of recesses that film laid into them would have to stretch for by more than it gives: the
/// way down, across and up again over the opening, less 1, across the narrower side.
void check_recesses(const Panel& panel, const Film& film, Faults& faults);

} // namespace pelt::piece
