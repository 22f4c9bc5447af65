// SPDX-License-Identifier: MIT
// A range of lengths as a bar over a scale.
#pragma once

#include "model/estimate.hpp"
#include "report/draw/picture.hpp"
#include "report/numbers.hpp"

namespace pelt::report::draw {

/// Low to high as a bar, the middle and what it is as scaled as lines through it, what to price by
/// as an arrow; `type` is the size of its words. Empty where nothing is known of the range.
Picture range_bar(const Estimate& estimate, double width, double type, const Measures& measures,
                  const Letters& letters);

} // namespace pelt::report::draw
