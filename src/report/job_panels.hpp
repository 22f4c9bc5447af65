// SPDX-License-Identifier: MIT
// The panels that a plan cuts.
#pragma once

#include "report/report.hpp"

#include <map>
#include <string>
#include <utility>

namespace pelt::report {

using PanelKey = std::pair<int, int>; ///< vehicle, panel

/// The panels that have a piece in the plan, in the files' order, with one of its ids.
std::map<PanelKey, PieceId> panels_cut(const Plan& plan);

/// False for a panel that was left out: what is wrong with it is not this sheet's business.
bool is_of_this_job(const Sheet& sheet, const std::string& panel);

const Panel& panel_of(const Job& job, const PanelKey& key);

} // namespace pelt::report
