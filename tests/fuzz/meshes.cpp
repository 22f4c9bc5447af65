// SPDX-License-Identifier: MIT
// Scans: points, triangles and one surface of disc shape, or what is wrong in a sentence.
#include "fuzzed.hpp"
#include "geometry/mesh/mesh.hpp"
#include "read/mesh/mesh_file.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::fuzzed {
namespace {

bool is_finite(const Point3& p) {
    return std::isfinite(p.x) && std::isfinite(p.y) && std::isfinite(p.z);
}

template <class T>
void expect_right(const T& mesh) {
    const auto points = static_cast<int>(mesh.points.size());
    expect(std::all_of(mesh.points.begin(), mesh.points.end(), is_finite), "a point is nowhere");
    expect(!mesh.triangles.empty(), "no triangle");
    for (const Triangle& t : mesh.triangles)
        for (const int corner : t)
            expect(0 <= corner && corner < points, "a corner is no point");
}

void expect_a_surface(geometry::Mesh mesh) {
    const geometry::SurfaceFound found = geometry::surface_of(std::move(mesh));
    for (const std::string& remark : found.remarks)
        expect_printable(remark);
    if (found.surface) {
        expect_right(*found.surface);
        expect(!found.surface->loops.empty(), "a surface without a boundary");
        return;
    }
    expect(found.what.size() > 5, "no sentence for what hinders");
    expect_printable(found.what);
    expect_printable(found.remedy);
}

void mesh(std::string_view name, std::string_view bytes) {
    read::MeshRead found = read::parse_mesh(name, bytes);
    if (found.mesh) {
        expect_right(*found.mesh);
        expect_a_surface(*std::move(found.mesh));
        return;
    }
    expect(found.what.size() > 5, "no sentence for what is wrong");
    expect_printable(found.what);
    expect_printable(found.remedy);
}

} // namespace

void obj(std::string_view bytes) {
    mesh("fuzzed.obj", bytes);
}

void ply(std::string_view bytes) {
    mesh("fuzzed.ply", bytes);
}

void stl(std::string_view bytes) {
    mesh("fuzzed.stl", bytes);
}

} // namespace pelt::fuzzed
