// SPDX-License-Identifier: MIT
// The bytes of a scan to points and triangles. Inside read/ only.
#pragma once

#include "geometry/mesh/mesh.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace pelt::read {

/// How far from the origin a point may lie. How many there may be: model/limits.hpp; counts that a
/// file only claims are held against its length before memory is taken for them.
inline constexpr double farthest_coordinate = 1e9;

/// A mesh, or in words what is wrong with the file.
struct MeshRead {
    std::optional<geometry::Mesh> mesh;
    std::string what; ///< to follow the file's name: "line 12: …", "byte 84: …", "is empty"
    std::string remedy;
};

/// By the ending of the name: .obj, .ply, .stl. Coordinates are those of the file, finite and at
/// most a thousand million; indices are valid; there is a triangle at least. Polygons are cut into
/// triangles from their first corner.
MeshRead parse_mesh(std::string_view name, std::string_view bytes);

} // namespace pelt::read
