// SPDX-License-Identifier: MIT
// Loose triangles to joined ones. Inside geometry/mesh/ only.
#pragma once

#include "geometry/mesh/mesh.hpp"

namespace pelt::geometry {

/// Points nearer than a millionth of the mesh's diagonal become one (the first of them); triangles
/// without area or given twice go, points that no triangle uses too. A triangle whose corners lie
/// on a line is closed by joining the ends of its shortest side, so that no crack is left.
void weld(Mesh& mesh);

} // namespace pelt::geometry
