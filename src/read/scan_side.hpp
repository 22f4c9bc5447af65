// SPDX-License-Identifier: MIT
// Whether a scan was given inside out. Inside read/ only.
#pragma once

#include "geometry/mesh/facing.hpp"
#include "model/vehicle.hpp"

#include <optional>
#include <string>

namespace pelt::read {

/// What speaks against a scan's outside being out, to follow its name, and what to do.
struct Doubt {
    std::string what;
    std::string remedy;
};

/// A file of triangles cannot say which side is out but by the order of their corners, which
/// exports turn round easily; the blank would then be mirrored. What else is known: a left panel
/// faces left of `forward` with `up` upwards, a right one right; a panel that lies faces up more
/// often than down; panels bulge more often than they are hollow. None where nothing speaks against
/// it, or as much for it. `forward`, `up`: of length 1.
std::optional<Doubt> doubt_about(const geometry::Facing& facing, Point3 forward, Point3 up,
                                 Sides sides);

} // namespace pelt::read
