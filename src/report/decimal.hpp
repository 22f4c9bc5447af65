// SPDX-License-Identifier: MIT
// Exact decimal text of whole numbers: no binary fraction and no locale comes in between.
#pragma once

#include "model/length.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace pelt::report {

/// value × 10^-places in full, with trailing zeros taken off down to `least` decimals:
/// decimal(1524000, 3, 1) is "1524.0".
std::string decimal(Int128 value, int places, int least);

/// A figure that never was on the grid, in thousandths: rounded once, so that what is printed and
/// what is added up agree.
std::int64_t thousandths(double value);

/// Quotient of whole numbers, divisor > 0.
Int128 divided_down(Int128 value, Int128 divisor);
Int128 divided_up(Int128 value, Int128 divisor);
/// To the nearest; a half goes away from zero.
Int128 divided_nearest(Int128 value, Int128 divisor);

/// Quotients of the parts of a whole, none below 0, that add up to `sum`, which is the whole's own
/// quotient rounded either way: each is rounded down, then those that lost most are one more, of
/// equals the first.
std::vector<Int128> divided_to_add_up(const std::vector<Int128>& parts, Int128 divisor, Int128 sum);

} // namespace pelt::report
