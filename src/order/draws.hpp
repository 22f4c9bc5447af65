// SPDX-License-Identifier: MIT
// Vehicles drawn by what is assumed of guessed sizes, and what film they take. Inside order/ only.
//
// Each guessed panel has two factors of its own, one for each of its sizes, and each axis of the
// vehicle has one that all its guessed sizes share (trade/likeness.hpp). A factor takes the middles
// of as many strata of the normal distribution as there are draws, in an order of its own. A draw
// is divided where a fitter would, and laid out straight by a search that is cut short, each by one thread, so that any number of
// threads draws the same.
#pragma once

#include "model/estimate.hpp"
#include "order/order.hpp"
#include "order/spare.hpp"

#include <cstdint>
#include <optional>
#include <vector>

namespace pelt::order {

/// The normal numbers of one factor, a draw each.
using Normals = std::vector<double>;

/// Those of the two sizes of a panel, along its drawing's x and y.
struct PanelNormals {
    PanelOf panel;
    Normals x;
    Normals y;
};

struct Factors {
    std::vector<PanelNormals> panels;
    std::vector<Normals> axes; ///< by trade::Axis
};

/// A panel's factors and an axis's depend on the seed and their place alone.
Factors stratified_factors(const std::vector<PanelOf>& guessed, std::size_t draws,
                           std::uint64_t seed);

struct Draw {
    std::optional<Um> length;      ///< none: some panel goes on no roll
    std::vector<Remakes> remakes;  ///< what its pieces cost when they are spoilt
    std::vector<PanelOf> too_wide; ///< those panels
};

/// The guessed panels of a job, by vehicle and panel.
std::vector<PanelOf> guessed_of(const Job& job);

/// How far layouts are looked for: so far as tells their length within a few percent, or as a plan
/// of the least effort does.
enum class Search { cut_short, to_its_end };

/// One draw for each value of the factors. `watch` may stop it, and fewer come back.
std::vector<Draw> draws_of(const Request& request, const Factors& factors,
                           Search search = Search::cut_short);

/// How many times as long layouts are by a search to its end as by one that is cut short: the
/// median over every twentieth draw. Quick looks come out a little long, and would price too high.
double gain_of_searching_on(const Request& request, const Factors& factors,
                            const std::vector<Draw>& draws);

} // namespace pelt::order
