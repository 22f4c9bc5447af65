// SPDX-License-Identifier: MIT
// Surfaces whose stretch is known, and what the layouts make of them.
#pragma once

#include "develop/surface/flatten.hpp"
#include "develop/surface/relax.hpp"
#include "develop/surface/roof.hpp"
#include "develop/surface/start.hpp"
#include "geometry/mesh/mesh.hpp"
#include "meshes.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>
#include <utility>

namespace pelt::develop {

using std::numbers::pi;

constexpr double degree = pi / 180;

inline Sheet3 sheet_of(const test::Mesh& mesh) {
    return {mesh.points, mesh.triangles, mesh.triangles.size(),
            geometry::loops_of(mesh.points, mesh.triangles).front()};
}

inline bool near_share(double a, double b, double share) {
    return std::abs(a - b) <= share * std::abs(b);
}

/// Spread of the as-rigid-as-possible layout.
struct Rigidly {
    double spread;
    double energy;
    Flat flat;
};
inline Rigidly rigidly(const test::Mesh& mesh) {
    const Sheet3 sheet = sheet_of(mesh);
    const auto patch = Patch::of(sheet.points, sheet.triangles);
    REQUIRE(patch.has_value());
    const auto start = conformal(*patch, sheet.points, sheet.outline);
    REQUIRE(start.has_value());
    Rigid rigid = as_rigid_as_possible(*patch, *start);
    const double spread = range_of(*patch, patch->maps(rigid.flat)).ratio() - 1;
    return {spread, rigid.energy, std::move(rigid.flat)};
}

inline double least_of(const test::Mesh& mesh) {
    const auto flat = flattened(sheet_of(mesh));
    REQUIRE(flat.has_value());
    return flat->least_stretch;
}

inline double roof_of(const test::Mesh& mesh) {
    const Sheet3 sheet = sheet_of(mesh);
    const auto patch = Patch::of(sheet.points, sheet.triangles);
    REQUIRE(patch.has_value());
    return roof_bound(sheet, *patch).value_or(-1);
}

inline double flat_distance(const Flat& flat, std::size_t a, std::size_t b) {
    return size(flat[a] - flat[b]);
}

/// The cap's closed form: pole factor, rim factor around, spread.
inline double rigid_spread_of_cap(double a) {
    const double ln_cos = std::log(std::cos(a / 2));
    const double t = std::tan(a / 2);
    const double pole = (1 - 2 * ln_cos / (t * t)) / 2;
    const double hoop = -2 * ln_cos / std::pow(std::sin(a / 2), 2);
    return hoop / pole - 1;
}

inline test::Mesh paraboloid(double height, int rings) {
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

inline double exact_of_paraboloid(double height) {
    const double u = 2 * height;
    return std::sqrt(1 + u * u) / 2 + std::asinh(u) / (4 * height) - 1;
}

inline test::Mesh sphere_rectangle(double half, int cells) {
    return test::grid(cells, cells, [=](double u, double v) {
        const double lon = half * (2 * u - 1);
        const double lat = half * (2 * v - 1);
        return Point3{std::cos(lat) * std::sin(lon), std::sin(lat), std::cos(lat) * std::cos(lon)};
    });
}

inline test::Mesh saddle(double k, int rings) {
    return test::disc(rings, [=](double angle, double share) {
        const double x = share * std::cos(angle);
        const double y = share * std::sin(angle);
        return Point3{x, y, k * (x * x - y * y) / 2};
    });
}

inline test::Mesh torus_outside(double half, int across, int up) {
    return test::grid(across, up, [=](double u, double v) {
        const double lon = 60 * degree * u;
        const double lat = half * (2 * v - 1);
        const double r = 3 + std::cos(lat);
        return Point3{r * std::sin(lon), std::sin(lat), r * std::cos(lon)};
    });
}

/// A spheroid of equator radius 1 and pole radius c, from its pole to the rim of radius .8, equal
/// arcs between rings.
inline test::Mesh spheroid(double c, int rings) {
    const double end = std::asin(.8);
    const int steps = 4000;
    std::vector<double> arc{0}; // Simpson's rule
    const auto speed = [=](double t) { return std::hypot(std::cos(t), c * std::sin(t)); };
    for (int i = 0; i < steps; ++i) {
        const double h = end / steps;
        arc.push_back(arc.back() +
                      h / 6 * (speed(i * h) + 4 * speed((i + .5) * h) + speed((i + 1) * h)));
    }
    return test::disc(rings, [=](double angle, double share) {
        std::size_t i = 0;
        while (i + 1 < steps && arc[i + 1] < share * arc.back())
            ++i;
        const double t =
            end / steps *
            (static_cast<double>(i) + (share * arc.back() - arc[i]) / (arc[i + 1] - arc[i]));
        return Point3{std::sin(t) * std::cos(angle), std::sin(t) * std::sin(angle),
                      c * std::cos(t)};
    });
}

} // namespace pelt::develop
