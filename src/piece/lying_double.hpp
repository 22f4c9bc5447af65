// SPDX-License-Identifier: MIT
// Parts that lie wholly on the film that runs under them: a seam line nearer to the edge than the
// overlap leaves such parts. Inside piece/ only.
#pragma once

#include "piece/dividing.hpp"

namespace pelt::piece {

/// Leaves out parts that the film under their seams covers wholly, with those seams: it covers the
/// panel there without them. False: some such part had to stay, because another one would end over
/// nothing without it.
bool leave_out_doubled(DividedPanel& divided);

/// Whether the film under the seam reaches the panel's edge all along the upper part, whose tuck
/// alone goes beyond it.
bool lies_double_to_the_edge(const DividedPanel& divided, const PanelSeam& seam,
                             const Polygon& outline);

} // namespace pelt::piece
