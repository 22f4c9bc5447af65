// SPDX-License-Identifier: MIT
// Invented jobs for the properties that every straight layout must have.
#pragma once

#include "nest/nest.hpp"
#include "nest/random.hpp"

#include <vector>

namespace pelt::test {

struct RandomJob {
    std::vector<Piece> pieces;
    std::vector<Roll> rolls;
    nest::Goal goal;
};

/// Any mix of film widths, rulers, trims, directions, copies, stages, tables, stock and flaws.
RandomJob random_job(std::uint64_t seed);

/// Gives every copy a place in the order of laying.
void lay_in_random_order(RandomJob& job, std::uint64_t seed);

/// A rectangle with its low corner at the frame's origin.
Piece rectangle(Um along, Um across, int index, int copies, std::vector<Turn> turns);

} // namespace pelt::test
