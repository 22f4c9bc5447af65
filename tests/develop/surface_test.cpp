// SPDX-License-Identifier: MIT
// Surfaces laid flat, held against closed forms. Sources: J. Milnor, "A Problem in Cartography",
// Amer. Math. Monthly 76 (1969): the least stretch of a cap is alpha / sin alpha - 1, of any convex
// dome of revolution its meridian over its rim's radius, less 1. The as-rigid-as-possible layout of
// a cap in closed form and the roof bound are derived in DEVELOPERS.md. Figures marked "mesh" were
// computed once with other code on meshes of the same kind.
#include "develop/crown.hpp"
#include "develop/surface/flatten.hpp"
#include "develop/surface/lid.hpp"
#include "develop/surface/relax.hpp"
#include "develop/surface/roof.hpp"
#include "develop/surface/slim.hpp"
#include "develop/surface/start.hpp"
#include "geometry/mesh/mesh.hpp"
#include "meshes.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace pelt::develop {
namespace {

using std::numbers::pi;

constexpr double degree = pi / 180;

Sheet3 sheet_of(const test::Mesh& mesh) {
    return {mesh.points, mesh.triangles, mesh.triangles.size(),
            geometry::loops_of(mesh.points, mesh.triangles).front()};
}

bool near_share(double a, double b, double share) {
    return std::abs(a - b) <= share * std::abs(b);
}

/// Spread of the as-rigid-as-possible layout.
struct Rigidly {
    double spread;
    double energy;
    Flat flat;
};
Rigidly rigidly(const test::Mesh& mesh) {
    const Sheet3 sheet = sheet_of(mesh);
    const auto patch = Patch::of(sheet.points, sheet.triangles);
    REQUIRE(patch.has_value());
    const auto start = conformal(*patch, sheet.points, sheet.outline);
    REQUIRE(start.has_value());
    Rigid rigid = as_rigid_as_possible(*patch, *start);
    const double spread = range_of(*patch, patch->maps(rigid.flat)).ratio() - 1;
    return {spread, rigid.energy, std::move(rigid.flat)};
}

double least_of(const test::Mesh& mesh) {
    const auto flat = flattened(sheet_of(mesh));
    REQUIRE(flat.has_value());
    return flat->least_stretch;
}

double roof_of(const test::Mesh& mesh) {
    const Sheet3 sheet = sheet_of(mesh);
    const auto patch = Patch::of(sheet.points, sheet.triangles);
    REQUIRE(patch.has_value());
    return roof_bound(sheet, *patch).value_or(-1);
}

double flat_distance(const Flat& flat, std::size_t a, std::size_t b) {
    return size(flat[a] - flat[b]);
}

/// The cap's closed form: pole factor, rim factor around, spread.
double rigid_spread_of_cap(double a) {
    const double ln_cos = std::log(std::cos(a / 2));
    const double t = std::tan(a / 2);
    const double pole = (1 - 2 * ln_cos / (t * t)) / 2;
    const double hoop = -2 * ln_cos / std::pow(std::sin(a / 2), 2);
    return hoop / pole - 1;
}

test::Mesh paraboloid(double height, int rings) {
    // Equal arcs between rings, the meridian's length in closed form.
    const auto arc = [=](double r) {
        const double u = 2 * height * r;
        return r / 2 * std::sqrt(1 + u * u) + std::asinh(u) / (4 * height);
    };
    return test::disc(rings, [=](double angle, double share) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; ++i)
            (arc((low + high) / 2) < share * arc(1) ? low : high) = (low + high) / 2;
        return Point3{low * std::cos(angle), low * std::sin(angle), -height * low * low};
    });
}

double exact_of_paraboloid(double height) {
    const double u = 2 * height;
    return std::sqrt(1 + u * u) / 2 + std::asinh(u) / (4 * height) - 1;
}

test::Mesh sphere_rectangle(double half, int cells) {
    return test::grid(cells, cells, [=](double u, double v) {
        const double lon = half * (2 * u - 1);
        const double lat = half * (2 * v - 1);
        return Point3{std::cos(lat) * std::sin(lon), std::sin(lat), std::cos(lat) * std::cos(lon)};
    });
}

test::Mesh saddle(double k, int rings) {
    return test::disc(rings, [=](double angle, double share) {
        const double x = share * std::cos(angle);
        const double y = share * std::sin(angle);
        return Point3{x, y, k * (x * x - y * y) / 2};
    });
}

test::Mesh torus_outside(double half, int across, int up) {
    return test::grid(across, up, [=](double u, double v) {
        const double lon = 60 * degree * u;
        const double lat = half * (2 * v - 1);
        const double r = 3 + std::cos(lat);
        return Point3{r * std::sin(lon), std::sin(lat), r * std::cos(lon)};
    });
}

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
    // Chord of the sector: the developed angle is 67.618922 degrees, less what chords cut off.
    CHECK(std::abs(flat_distance(sector.flat, 0, cells) - 333.810620) < 1e-3);
    CHECK(std::abs(flat_distance(sector.flat, 10 * row, 10 * row + cells) - 890.161652) < 1e-3);
}

TEST_CASE("caps as rigid as possible: the closed form of stretch and energy") {
    struct Row {
        double degrees;
        double energy;
    };
    for (const Row row : {Row{15, 2.4606803e-05}, Row{30, 4.0053e-4}, Row{60, 6.8683e-3}}) {
        CAPTURE(row.degrees);
        const Rigidly cap = rigidly(test::cap(500, row.degrees * degree, 16));
        CHECK(near_share(cap.spread, rigid_spread_of_cap(row.degrees * degree), .005));
        CHECK(near_share(cap.energy, row.energy, .016));
    }
}

TEST_CASE("caps and domes: the least stretch is Milnor's, from above") {
    for (const double degrees : {15.0, 30.0, 60.0, 90.0}) {
        CAPTURE(degrees);
        const double a = degrees * degree;
        const double exact = a / std::sin(a) - 1;
        const double found = least_of(test::cap(500, a, 16));
        CHECK(found >= exact);
        CHECK(found < 1.015 * exact);
    }
    for (const double height : {.1, .5}) {
        CAPTURE(height);
        const double exact = exact_of_paraboloid(height);
        const double found = least_of(paraboloid(height, 16));
        CHECK(found >= exact);
        CHECK(found < 1.015 * exact);
    }
}

TEST_CASE("finer meshes come nearer to Milnor's value") {
    const double exact = 30 * degree / std::sin(30 * degree) - 1;
    const double found = least_of(test::cap(500, 30 * degree, 32));
    CHECK(found >= exact);
    CHECK(found < 1.01 * exact);
}

TEST_CASE("the roof bound lies below the least stretch, on domes just below") {
    const std::array<test::Mesh, 6> surfaces{
        test::cap(1, 60 * degree, 12),      paraboloid(.3, 12),
        sphere_rectangle(20 * degree, 12),  saddle(.5, 12),
        torus_outside(30 * degree, 24, 12), test::crown(600, 80, 400, 60, 18, 12)};
    for (const test::Mesh& surface : surfaces)
        CHECK(roof_of(surface) <= 1.001 * least_of(surface));
    for (const double degrees : {20.0, 60.0}) {
        const double a = degrees * degree;
        CHECK(near_share(roof_of(test::cap(1, a, 24)), a / std::sin(a) - 1, .003));
    }
    CHECK(near_share(roof_of(paraboloid(.5, 24)), exact_of_paraboloid(.5), .003));
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
        const int cells = 16;
        const int across = static_cast<int>(std::lround(cells * x.arc / y.arc));
        const test::Mesh mesh =
            test::crown(row.chord_x, row.rise_x, row.chord_y, row.rise_y, across, cells);
        // Three percent, and one for the coarse mesh.
        CHECK(near_share(least_of(mesh), stretch_of(x, y, false).percent / 100, .04));
    }
    CHECK(least_of(test::crown(900, 0, 600, 80, 18, 12)) < 1e-9);
}

TEST_CASE("the symmetric layout from a disc: its energy, and nothing turned over") {
    const Sheet3 sheet = sheet_of(test::cap(1, 60 * degree, 16));
    const auto patch = Patch::of(sheet.points, sheet.triangles);
    REQUIRE(patch.has_value());
    const auto disc = on_a_disc(*patch, sheet.points, sheet.outline);
    REQUIRE(disc.has_value());
    CHECK(turned_over(*patch, patch->maps(*disc)) == 0);
    const Symmetric found = least_symmetric(*patch, *disc);
    CHECK(turned_over(*patch, patch->maps(found.flat)) == 0);
    // One-dimensional finite elements: 2.6131e-2 per area, which meshes approach from above.
    CHECK(found.energy > 2.6131e-2);
    CHECK(found.energy < 1.016 * 2.6131e-2);
}

TEST_CASE("the same panel moved, turned, scaled, renumbered or mirrored asks the same") {
    const test::Mesh plain = test::crown(600, 80, 400, 60, 12, 8);
    const double least = least_of(plain);
    test::Mesh other = plain;
    for (Point3& p : other.points)
        p = {25.4 * p.z + 70, 25.4 * p.x - 9, 25.4 * p.y + 1000};
    CHECK(std::abs(least_of(other) - least) < 1e-9);
    other = plain;
    for (Point3& p : other.points)
        p.x = -p.x;
    for (Triangle& t : other.triangles)
        std::swap(t[1], t[2]);
    CHECK(std::abs(least_of(other) - least) < 1e-9);
    // In another order the splitting ends its rounds elsewhere within its gap.
    other = plain;
    const int n = static_cast<int>(plain.points.size());
    std::reverse(other.points.begin(), other.points.end());
    for (Triangle& t : other.triangles)
        for (int& corner : t)
            corner = n - 1 - corner;
    CHECK(near_share(least_of(other), least, 1e-6));
}

TEST_CASE("a part of a panel, or the panel with a cut, never asks more") {
    constexpr double gap = 1.001;
    const double whole = least_of(test::cap(1, 45 * degree, 12));
    CHECK(least_of(test::cap(1, 30 * degree, 12)) < whole);
    // A flat rim around it never makes it less.
    const test::Mesh with_rim = test::disc(15, [](double angle, double share) {
        const double a = std::min(1.0, share * 15 / 12) * 45 * degree;
        const double beyond = std::max(0.0, share * 15 / 12 - 1);
        const double r = std::sin(a) + beyond;
        return Point3{r * std::cos(angle), r * std::sin(angle), std::cos(a)};
    });
    CHECK(least_of(with_rim) * gap >= whole);

    // One cut from the rim half way to the pole: points on it are doubled. Mesh: .0853.
    test::Mesh cut = test::cap(1, 45 * degree, 12);
    for (int ring = 7; ring <= 12; ++ring) {
        const int on_cut = 1 + 3 * ring * (ring - 1);
        const int copy = static_cast<int>(cut.points.size());
        cut.points.push_back(Point3(cut.points[static_cast<std::size_t>(on_cut)]));
        for (Triangle& t : cut.triangles) {
            double y = 0;
            for (const int corner : t)
                y += cut.points[static_cast<std::size_t>(corner)].y;
            for (int& corner : t)
                if (corner == on_cut && y < 0)
                    corner = copy;
        }
    }
    const double slit = least_of(cut);
    CHECK(slit <= gap * whole);
    CHECK(near_share(slit, .0853, .03));
}

TEST_CASE("a drape keeps within its limits and stretches less on the whole") {
    const Sheet3 sheet = sheet_of(test::crown(600, 80, 400, 60, 18, 12));
    const auto flat = flattened(sheet);
    REQUIRE(flat.has_value());
    const double limit = 1.1 * flat->least_stretch;
    const Drape within = drape(flat->patch, flat->least, limit);
    CHECK(within.met);
    CHECK(within.stretch < limit + 2e-4);
    const std::vector<Linear> maps = flat->patch.maps(within.flat);
    CHECK(range_of(flat->patch, maps).largest < 1 + 1e-5);
    CHECK(turned_over(flat->patch, maps) == 0);
    double mean = 0;
    const std::vector<Linear> least = flat->patch.maps(flat->least);
    for (std::size_t t = 0; t < least.size(); ++t)
        mean += flat->patch.facets()[t].area * (1 / least[t].smaller() - 1);
    CHECK(within.mean <= mean / flat->patch.area());
    // Left to itself film stretches more, in one place: mesh .0743, tape .50 K b² = .0734.
    CHECK(near_share(flat->natural_stretch, .0743, .03));
}

TEST_CASE("a lid closes a hole with the least area, facing the same way") {
    // An L of unit squares in the plane, as the rim of a hole: clockwise, the surface on its left.
    const std::vector<Point3> points{{0, 0, 0}, {0, 2, 0}, {1, 2, 0},
                                     {1, 1, 0}, {2, 1, 0}, {2, 0, 0}};
    const std::vector<Triangle> lid = lid_over(points, {0, 1, 2, 3, 4, 5});
    CHECK(lid.size() == 4);
    double doubled = 0;
    for (const Triangle& t : lid) {
        const auto at = [&](std::size_t k) { return points[static_cast<std::size_t>(t[k])]; };
        const double z =
            (at(1).x - at(0).x) * (at(2).y - at(0).y) - (at(2).x - at(0).x) * (at(1).y - at(0).y);
        CHECK(z > 0);
        doubled += z;
    }
    CHECK(std::abs(doubled - 6) < 1e-12);
}

} // namespace
} // namespace pelt::develop
