// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace pelt::order {

/// The number that a standard normal variable stays below with probability `p`, 0 < p < 1, to about
/// 16 digits (M. J. Wichura, "Algorithm AS 241: The percentage points of the normal distribution",
/// Applied Statistics 37, 1988; coefficients from memory, held against published quantiles by a
/// test).
double normal_quantile(double p);

/// The middles of `count` equally likely strata of a standard normal variable, shuffled.
std::vector<double> shuffled_normals(std::size_t count, std::uint64_t seed);

} // namespace pelt::order
