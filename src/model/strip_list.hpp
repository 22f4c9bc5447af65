// SPDX-License-Identifier: MIT
// What comes off a vehicle before it is wrapped, in the order of taking it off.
#pragma once

#include "model/quote.hpp"
#include "model/vehicle.hpp"

#include <set>
#include <string>
#include <vector>

namespace pelt {

struct PartOff {
    Hardware part; ///< its count is what these panels call for, of all that the vehicle has
    /// Wanted panels whose film tucks behind it or covers its place; empty: the file ties none.
    std::vector<std::string> panels;
};

/// Openings of a panel that film runs over while a part is off.
struct CoveredOf {
    std::string panel;
    std::vector<std::string> openings;
};

struct StripList {
    std::vector<PartOff> off;            ///< in the order of taking off
    std::vector<std::string> stay;       ///< by the user's wish, and what can only come off later
    std::vector<std::string> not_needed; ///< tied to panels that are not wrapped this time
    std::set<std::string> zones;         ///< kinds of zones to keep clear on the wanted panels
    int pieces = 0;                      ///< wanted panels, every side and copy
    double edge_mm = 0;                  ///< round all of them, laid flat, openings not counted
    std::vector<CoveredOf> covered;      ///< to be cut open when their parts go back
    std::vector<ConsumableNeed> used_up; ///< by these panels and parts; tucks by film only with one
};

} // namespace pelt
