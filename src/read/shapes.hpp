// SPDX-License-Identifier: MIT
// Whether the figures of a panel can be: simple outlines of the right size, openings and inlays
// inside and apart, seam lines that cross. Exact on the grid of 1 um. Inside read/ only.
#pragma once

#include "model/vehicle.hpp"
#include "read/context.hpp"

namespace pelt::read {

/// Tells what is wrong with the figures of a panel whose parts have been read.
void check_shapes(const Panel& panel, Context& context);

} // namespace pelt::read
