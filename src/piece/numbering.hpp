// SPDX-License-Identifier: MIT
// The parts of a divided panel in an order in which they can be laid. Inside piece/ only.
#pragma once

#include "piece/dividing.hpp"

namespace pelt::piece {

/// Numbers the parts anew, so that at every seam the part below has the lower number; as they were
/// where seams leave it open. False, and nothing changes, where one is too narrow, or parts lie
/// over one another in a ring: no order of laying then does what the seams say.
bool number_by_laps(DividedPanel& divided);

} // namespace pelt::piece
