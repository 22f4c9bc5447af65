// SPDX-License-Identifier: MIT
#include "develop/develop.hpp"
#include "develop/surface/dividing.hpp"
#include "geometry/mesh/mesh.hpp"
#include "mesh_panel.hpp"
#include "meshes.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <memory>
#include <numbers>
#include <string>
#include <vector>

using namespace pelt;

namespace {

DevelopedPanel divided(const test::Mesh& mesh, double film_percent, bool divide = true) {
    Faults faults;
    develop::Purpose purpose;
    purpose.film_percent = film_percent;
    purpose.divide = divide;
    DevelopedPanel out = develop::develop(test::panel_of(mesh), faults, purpose);
    CHECK(faults.empty());
    return out;
}

test::Mesh cap_of(double degrees) {
    return test::cap(200, degrees * std::numbers::pi / 180, 14);
}

} // namespace

TEST_CASE("nothing is proposed where one piece holds, or where nobody asks") {
    CHECK_FALSE(divided(cap_of(45), 13).stretch.division);
    CHECK_FALSE(divided(cap_of(45), 5, false).stretch.division);
}

TEST_CASE("a cap that asks too much is divided within the film's limit") {
    // Uncut it asks 45° / sin 45° - 1 = 11.07 % (J. Milnor 1969).
    for (const double limit : {9.0, 5.0, 2.0}) {
        CAPTURE(limit);
        const DevelopedPanel panel = divided(cap_of(45), limit);
        REQUIRE(panel.stretch.percent > limit);
        const auto& division = panel.stretch.division;
        REQUIRE(division);
        CHECK(division->stretch_percent <= limit);
        CHECK(division->cut_mm > 0);
        CHECK_FALSE(division->lines.empty());
        CHECK((division->kind == Division::Kind::relief) == (division->pieces == 1));
    }
}

TEST_CASE("parts cover the surface, and both sides of a seam are the same line") {
    const test::Mesh mesh = cap_of(40);
    const develop::Sheet3 sheet{mesh.points, mesh.triangles, mesh.triangles.size(),
                                geometry::loops_of(mesh.points, mesh.triangles).front()};
    const auto laid = develop::laid_least(sheet);
    REQUIRE(laid);
    const auto slit = develop::slit_along(sheet, laid->flat, {{Point{-1000, 13}, Point{1000, 41}}});
    REQUIRE(slit);
    REQUIRE(slit->parts.size() == 2);
    const double whole = geometry::area_of(mesh.points, mesh.triangles);
    CHECK(slit->areas[0] + slit->areas[1] == doctest::Approx(whole).epsilon(1e-12));
    // Every rim of a part is a stretch of the outline or of the seam.
    double rims = 0;
    for (const develop::Sheet3& part : slit->parts)
        rims += geometry::length_of(part.points, part.outline);
    CHECK(rims ==
          doctest::Approx(geometry::length_of(mesh.points, sheet.outline) + 2 * slit->length_mm)
              .epsilon(1e-9));
}

TEST_CASE("what is proposed for crowns, saddles and tori is within the limit and less than whole") {
    struct Shape {
        std::string name;
        test::Mesh mesh;
        double limit;
    };
    const auto torus = test::grid(24, 14, [](double u, double v) {
        const double around = (u - .5) * std::numbers::pi / 3;
        const double tube = (v - .5) * 2 * std::numbers::pi / 3;
        const double out = 300 + 100 * std::cos(tube);
        return Point3{out * std::sin(around), 100 * std::sin(tube), out * std::cos(around)};
    });
    const std::vector<Shape> shapes{
        {"crown", test::crown(300, 60, 200, 40, 20, 14), 6},
        {"high crown", test::crown(200, 60, 160, 50, 18, 14), 10},
        {"saddle", test::crown(400, 50, 400, -50, 18, 18), 3},
        {"torus", torus, 4},
    };
    for (const Shape& shape : shapes) {
        CAPTURE(shape.name);
        const DevelopedPanel panel = divided(shape.mesh, shape.limit);
        REQUIRE(panel.stretch.percent > shape.limit);
        REQUIRE(panel.stretch.division);
        const Division& found = *panel.stretch.division;
        CHECK(found.stretch_percent <= shape.limit);
        CHECK(found.stretch_percent < panel.stretch.percent);
    }
}
