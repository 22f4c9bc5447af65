// SPDX-License-Identifier: MIT
// The narrower jobs that a job contains: fewer stages, no quarter turns. Every layout of one is a
// layout of the job. Inside nest/straight only.
#pragma once

#include "nest/nest.hpp"

#include <span>
#include <vector>

namespace pelt::nest::straight {

struct Narrower {
    std::vector<Piece> pieces; ///< the job's own, with fewer turns perhaps
    Goal goal;
};

/// All of them, at most five: three stages and two where the job may have more, each with the
/// turns of the job and without quarter turns. Copies of a piece keep their places in the lists.
std::vector<Narrower> narrower_jobs(std::span<const Piece> pieces, const Goal& goal);

} // namespace pelt::nest::straight
