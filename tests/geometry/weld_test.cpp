// SPDX-License-Identifier: MIT
// Welding of what a scanner never gives and a hostile file does.
#include "geometry/mesh/mesh.hpp"

#include <doctest/doctest.h>

using namespace pelt;

TEST_CASE("half a million slivers on a line, each of which names the next: one triangle is left") {
    // Names in a chain were followed to its end for every corner: 10^11 steps.
    constexpr int slivers = 500'000;
    geometry::Mesh mesh;
    mesh.points = {{0, 0, 500}, {500, 0, 0}, {0, 500, 0}};
    double x = 0;
    for (int i = 0; i < slivers + 2; ++i) {
        mesh.points.push_back({x, 0, 0});
        x += (1 + static_cast<double>(i) / slivers) * (30'000.0 / slivers);
    }
    mesh.triangles.push_back({0, 1, 2});
    for (int i = slivers - 1; i >= 0; --i)
        mesh.triangles.push_back({i + 3, i + 4, i + 5});
    const geometry::SurfaceFound found = geometry::surface_of(std::move(mesh));
    REQUIRE(found.surface.has_value());
    CHECK(found.surface->triangles.size() == 1);
}
