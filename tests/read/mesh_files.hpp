// SPDX-License-Identifier: MIT
// One small mesh as a file in every format.
#pragma once

#include "geometry/mesh/mesh.hpp"

#include <cstddef>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>

namespace pelt::read {

using geometry::Mesh;

template <class Number>
void append(std::string& out, Number value, bool big = false) {
    std::string raw(sizeof(Number), '\0');
    std::memcpy(raw.data(), &value, sizeof(Number));
    out += big ? std::string(raw.rbegin(), raw.rend()) : raw;
}

inline Mesh roof() {
    return {{{0, 0, 0}, {2, 0, .5}, {2, 1, .25}, {0, 1, -1.5}}, {{0, 1, 2}, {0, 2, 3}}};
}

inline bool same(const Mesh& a, const Mesh& b) {
    return a.points == b.points && a.triangles == b.triangles;
}

/// As STL gives it: three points of its own for every triangle.
inline Mesh apart(const Mesh& mesh) {
    Mesh out;
    for (const Triangle& t : mesh.triangles) {
        const int n = static_cast<int>(out.points.size());
        for (const int corner : t)
            out.points.push_back(mesh.points[static_cast<std::size_t>(corner)]);
        out.triangles.push_back({n, n + 1, n + 2});
    }
    return out;
}

inline std::string binary_stl(const Mesh& mesh) {
    std::string out(80, 'x');
    append(out, static_cast<std::uint32_t>(mesh.triangles.size()));
    for (const Triangle& t : mesh.triangles) {
        for (int k = 0; k < 3; ++k)
            append(out, 0.0F);
        for (const int corner : t) {
            const Point3& p = mesh.points[static_cast<std::size_t>(corner)];
            for (const double c : {p.x, p.y, p.z})
                append(out, static_cast<float>(c));
        }
        append(out, std::uint16_t{0});
    }
    return out;
}

inline std::string binary_ply(const Mesh& mesh, bool big) {
    std::string out = "ply\nformat binary_" + std::string(big ? "big" : "little") +
                      "_endian 1.0\ncomment a test\nelement vertex " +
                      std::to_string(mesh.points.size()) +
                      "\nproperty double x\nproperty float y\nproperty double z\n"
                      "property uchar red\nelement edge 1\nproperty list uchar short what\n"
                      "element face " +
                      std::to_string(mesh.triangles.size()) +
                      "\nproperty list uchar int vertex_indices\nend_header\n";
    for (const Point3& p : mesh.points) {
        append(out, p.x, big);
        append(out, static_cast<float>(p.y), big);
        append(out, p.z, big);
        append(out, std::uint8_t{7});
    }
    append(out, std::uint8_t{2});
    append(out, std::int16_t{-1}, big);
    append(out, std::int16_t{5}, big);
    for (const Triangle& t : mesh.triangles) {
        append(out, std::uint8_t{3});
        for (const int corner : t)
            append(out, static_cast<std::int32_t>(corner), big);
    }
    return out;
}

inline constexpr std::string_view ascii_ply =
    "ply\r\nformat ascii 1.0\r\nobj_info made by hand\r\n"
    "element vertex 4\r\nproperty float x\r\nproperty float y\r\n"
    "property float z\r\nelement face 1\r\n"
    "property list uchar uint vertex_index\r\nend_header\r\n"
    "0 0 0\r\n2 0 .5\r\n2 1 0.25\r\n0 1 -15e-1\r\n4 0 1 2 3";
inline constexpr std::string_view ascii_stl =
    "solid roof of a shed\n"
    "facet normal 0 nan 1\nouter loop\nvertex 0 0 0\n"
    "vertex 2 0 .5\nvertex 2 1 .25\nendloop\nendfacet\n"
    "endsolid\nsolid other\nfacet normal 0 0 1 outer loop\n"
    "vertex 0 0 0 vertex 2 1 +.25 vertex 0 1 -1.5 endloop\n"
    "endfacet\nendsolid other";

} // namespace pelt::read
