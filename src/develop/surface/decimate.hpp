// SPDX-License-Identifier: MIT
// Fewer triangles for the same surface. Inside develop/ only.
#pragma once

#include "model/surface.hpp"

#include <cstddef>

namespace pelt::develop {

struct Thinned {
    Surface surface;
    double off_mm = 0; ///< no point of the old surface lies farther from the new one
};

/// Joins the ends of edges until at most `most` triangles are left, or none can be joined without
/// turning a triangle over: the cheapest first by the distance to the planes that met there (M.
/// Garland, P. Heckbert 1997) and a little for the length, so that triangles stay of one size.
/// Points of a loop stay on it and only join along it; the loops keep their order.
Thinned thinned(const Surface& surface, std::size_t most);

} // namespace pelt::develop
