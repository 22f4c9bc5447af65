// SPDX-License-Identifier: MIT
// Exact decimal text of whole numbers: no binary fraction and no locale comes in between.
#pragma once

#include "model/length.hpp"

#include <cstdint>
#include <string>

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

} // namespace pelt::report
