// SPDX-License-Identifier: MIT
// Which side of a scan is out: what speaks against it.
#include "geometry/mesh/facing.hpp"
#include "geometry/mesh/mesh.hpp"
#include "meshes.hpp"
#include "read/scan_side.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace pelt;

namespace {

constexpr Point3 nose{1, 0, 0};
constexpr Point3 sky{0, 0, 1};

/// A cap that bulges the way z; the frame is then turned so that it bulges `way`.
Surface bulging(Point3 x, Point3 y, Point3 way) {
    const test::Mesh cap = test::cap(200, .6, 8);
    geometry::Mesh mesh{{}, cap.triangles};
    for (const Point3& p : cap.points)
        mesh.points.push_back({p.x * x.x + p.y * y.x + p.z * way.x,
                               p.x * x.y + p.y * y.y + p.z * way.y,
                               p.x * x.z + p.y * y.z + p.z * way.z});
    return *geometry::surface_of(mesh).surface;
}

std::string doubt(const Surface& surface, Sides sides, Point3 up = sky) {
    const auto found = read::doubt_about(geometry::facing_of(surface), nose, up, sides);
    CHECK((!found || !found->remedy.empty()));
    return found ? found->what : "";
}

} // namespace

TEST_CASE("how a surface faces, and turned inside out") {
    Surface left = bulging({-1, 0, 0}, {0, 0, 1}, {0, 1, 0});
    const geometry::Facing facing = geometry::facing_of(left);
    CHECK(std::abs(facing.normal.y - 1) < 1e-9);
    CHECK(facing.share > .9);
    CHECK(facing.share < 1);
    // A cap of the half angle a on the radius R lies R (1 - cos a) / 2 over its rim, mean.
    const double area = 2 * 3.14159265358979 * (1 - std::cos(.6));
    CHECK(std::abs(facing.bulge - (1 - std::cos(.6)) / 2 / std::sqrt(area)) < .002);
    geometry::turn_inside_out(left);
    CHECK(std::abs(geometry::facing_of(left).bulge + facing.bulge) < 1e-12);
    CHECK(geometry::loops_of(left.points, left.triangles).front().size() ==
          left.loops.front().size());
    // The surface stays on the left of its loop.
    Surface again = left;
    again.loops = geometry::loops_of(left.points, left.triangles);
    CHECK(std::abs(geometry::facing_of(again).bulge - geometry::facing_of(left).bulge) < 1e-12);
}

TEST_CASE("a scan inside out is noticed by its side, its bulge and its lying") {
    Surface left = bulging({-1, 0, 0}, {0, 0, 1}, {0, 1, 0});
    CHECK(doubt(left, Sides::left).empty());
    CHECK(doubt(left, Sides::both).empty());
    CHECK(doubt(left, Sides::centre).empty());
    CHECK(doubt(left, Sides::right).find("it seems to be of the other side") != std::string::npos);
    Surface turned = left;
    geometry::turn_inside_out(turned);
    CHECK(doubt(turned, Sides::left) == "faces the vehicle's right, and the panel is its left one: "
                                        "it seems to be inside out");
    // Seen from where it is hollow it faces right: the side speaks for it.
    CHECK(doubt(turned, Sides::right).empty());
    CHECK(doubt(turned, Sides::centre) ==
          "is hollow as seen from outside: it seems to be inside out");

    Surface roof = bulging({1, 0, 0}, {0, 1, 0}, {0, 0, 1});
    CHECK(doubt(roof, Sides::centre).empty());
    geometry::turn_inside_out(roof);
    CHECK(doubt(roof, Sides::centre).find("is hollow") == 0);
    // A lip's underside bulges down: nothing is wrong with it.
    CHECK(doubt(bulging({1, 0, 0}, {0, -1, 0}, {0, 0, -1}), Sides::centre).empty());
    // Flat and face down there is only that.
    test::Mesh plate = test::grid(4, 4, [](double u, double v) { return Point3{v, u, 0}; });
    CHECK(doubt(*geometry::surface_of({plate.points, plate.triangles}).surface, Sides::centre) ==
          "faces down: it seems to be inside out");
}
