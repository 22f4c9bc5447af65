// SPDX-License-Identifier: MIT
// Many panels developed, scans side by side. Inside order/ only.
#pragma once

#include "develop/develop.hpp"
#include "model/plan.hpp"

#include <vector>

namespace pelt::order {

/// A panel to develop, and what came of it.
struct Developing {
    const Panel* panel = nullptr;
    DevelopedPanel developed = {};
    Faults faults = {};
};

/// Panels do not depend on one another, and scans take long: where there are some the panels run on
/// up to `threads` threads (at least one). What comes of them does not depend on how many.
void develop_each(std::vector<Developing>& panels, int threads, const develop::Purpose& purpose);

/// Fills job.developed for all vehicles. A panel of which nothing is cut is not developed when it
/// is a scan, unless those are wanted too: that takes time for nothing, and its mistakes are not
/// this job's.
void develop_all(Job& job, int threads, const std::shared_ptr<develop::LaidScans>& scans,
                 bool left_out_scans_too, Faults& faults);

} // namespace pelt::order
