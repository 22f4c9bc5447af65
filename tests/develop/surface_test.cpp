// SPDX-License-Identifier: MIT
// Surfaces laid flat, held against closed forms. Sources: J. Milnor, "A Problem in Cartography",
// Amer. Math. Monthly 76 (1969): the least stretch of a cap is alpha / sin alpha - 1, of any convex
// dome of revolution its meridian over its rim's radius, less 1. The as-rigid-as-possible layout of
// a cap in closed form and the roof bound are derived in DEVELOPERS.md. Figures marked "mesh" were
// computed once with other code on meshes of the same kind.
#include "develop/crown.hpp"
#include "surfaces.hpp"

#include <doctest/doctest.h>

#include <array>
#include <cmath>

namespace pelt::develop {
namespace {

TEST_CASE("a cylinder and a cone lie flat without stretch, chords for arcs") {
    const double radius = 200;
    const double turn = 100 * degree;
    const int n = 20;
    const test::Mesh cylinder = test::grid(n, 10, [=](double u, double v) {
        const double a = turn * (u - .5);
        return Point3{radius * std::sin(a), 500 * v, radius * std::cos(a)};
    });
    const Rigidly flat = rigidly(cylinder);
    CHECK(flat.spread < 1e-9);
    // 348.955099: 2 n R sin(turn / 2 n).
    CHECK(std::abs(flat_distance(flat.flat, 0, n) - 2 * n * radius * std::sin(turn / (2 * n))) <
          1e-6);
    CHECK(least_of(cylinder) < 1e-9);

    const double half_apex = 25 * degree;
    const int cells = 40;
    const test::Mesh cone = test::grid(cells, 10, [=](double u, double v) {
        const double slant = 300 + 500 * v;
        const double a = 160 * degree * (u - .5);
        return Point3{slant * std::sin(half_apex) * std::sin(a),
                      slant * std::sin(half_apex) * std::cos(a), slant * std::cos(half_apex)};
    });
    const Rigidly sector = rigidly(cone);
    CHECK(sector.spread < 1e-9);
    const std::size_t row = cells + 1;
    CHECK(std::abs(flat_distance(sector.flat, 0, 10 * row) - 500) < 1e-6);
    // Every cell is a sector of the angle 2 asin(sin half_apex sin 2°): 67.618922 degrees together,
    // less what chords cut off. Their outer chord is 890.161652, the inner one 333.810620.
    const double cell = 2 * std::asin(std::sin(half_apex) * std::sin(80 * degree / cells));
    const double chord = 2 * std::sin(cells * cell / 2);
    CHECK(std::abs(300 * chord - 333.810620) < 1e-6);
    CHECK(std::abs(flat_distance(sector.flat, 0, cells) - 300 * chord) < 1e-6);
    CHECK(std::abs(flat_distance(sector.flat, 10 * row, 10 * row + cells) - 800 * chord) < 1e-6);
    CHECK(least_of(cone) < 1e-9);
}

TEST_CASE("caps as rigid as possible: the closed form of stretch and energy") {
    struct Row {
        double degrees;
        double energy;
    };
    for (const Row row : {Row{15, 2.4606803e-05}, Row{20, 7.8116445e-05}, Row{30, 4.0053249e-4},
                          Row{60, 6.8683e-3}}) {
        CAPTURE(row.degrees);
        const double exact = rigid_spread_of_cap(row.degrees * degree);
        const Rigidly coarse = rigidly(test::cap(500, row.degrees * degree, 16));
        CHECK(near_share(coarse.spread, exact, .005));
        CHECK(near_share(coarse.energy, row.energy, .016));
        const Rigidly fine = rigidly(test::cap(500, row.degrees * degree, 32));
        CHECK(near_share(fine.spread, exact, .001));
        CHECK(near_share(fine.energy, row.energy, .004));
    }
}

TEST_CASE("caps and domes: the least stretch is Milnor's, from above, within one percent") {
    for (const double degrees : {15.0, 30.0, 45.0, 60.0, 75.0, 90.0}) {
        CAPTURE(degrees);
        const double a = degrees * degree;
        const double exact = a / std::sin(a) - 1;
        const double found = least_of(test::cap(500, a, 32));
        CHECK(found >= exact);
        CHECK(found < 1.01 * exact);
    }
    for (const double height : {.1, .2, .3, .5, .8}) {
        CAPTURE(height);
        const double exact = exact_of_paraboloid(height);
        const double found = least_of(paraboloid(height, 24));
        CHECK(found >= exact);
        CHECK(found < 1.012 * exact);
    }
    // Spheroids, arc over radius by quadrature: flat ones and long ones.
    CHECK(near_share(least_of(spheroid(.5, 24)), .044397053, .012));
    CHECK(near_share(least_of(spheroid(2, 24)), .49907295, .012));
}

TEST_CASE("the roof bound lies below the least stretch, on domes just below") {
    const std::array<test::Mesh, 8> surfaces{
        test::cap(1, 60 * degree, 12),          paraboloid(.3, 12),
        sphere_rectangle(20 * degree, 12),      saddle(.5, 12),
        torus_outside(30 * degree, 24, 12),     test::crown(600, 80, 400, 60, 18, 12),
        test::crown(400, 40, 400, -40, 12, 12), spheroid(.5, 12)};
    for (const test::Mesh& surface : surfaces)
        CHECK(roof_of(surface) <= 1.001 * least_of(surface));
    for (const double degrees : {20.0, 60.0}) {
        const double a = degrees * degree;
        CHECK(near_share(roof_of(test::cap(1, a, 24)), a / std::sin(a) - 1, .003));
    }
    for (const double height : {.1, .5})
        CHECK(near_share(roof_of(paraboloid(height, 24)), exact_of_paraboloid(height), .003));
    CHECK(near_share(roof_of(spheroid(.5, 24)), .044397053, .003));
}

TEST_CASE("rectangles, saddles and tori: the least stretch of finer meshes") {
    // Mesh: 24 cells on the short side, or 24 rings.
    CHECK(near_share(least_of(sphere_rectangle(20 * degree, 12)), .02351, .03));
    CHECK(near_share(least_of(saddle(.5, 12)), .03830, .03));
    CHECK(near_share(least_of(torus_outside(30 * degree, 24, 12)), .02815, .03));
}

TEST_CASE("the tape's formula for crowns agrees with the mesh") {
    struct Row {
        double chord_x, rise_x, chord_y, rise_y;
    };
    for (const Row& row : {Row{1400, 40, 1200, 60}, Row{1000, 30, 500, 15}, Row{1200, 100, 600, 60},
                           Row{600, 80, 400, 60}, Row{300, 60, 200, 40}, Row{200, 60, 160, 50},
                           Row{400, 40, 400, -40}, Row{1500, 20, 250, 40}}) {
        CAPTURE(row.chord_x);
        CAPTURE(row.rise_x);
        const Bow x = bow_over(row.chord_x, row.rise_x);
        const Bow y = bow_over(row.chord_y, row.rise_y);
        const int cells = 24;
        const int across = static_cast<int>(std::lround(cells * x.arc / y.arc));
        const test::Mesh mesh =
            test::crown(row.chord_x, row.rise_x, row.chord_y, row.rise_y, across, cells);
        CHECK(near_share(least_of(mesh), stretch_of(x, y, Rim::any).percent / 100, .03));
    }
    CHECK(least_of(test::crown(900, 0, 600, 80, 36, 24)) < 1e-9);
}

} // namespace
} // namespace pelt::develop
