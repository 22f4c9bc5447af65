// SPDX-License-Identifier: MIT
// Analytic surfaces as triangles, for tests and benches: their exact stretch is known.
#pragma once

#include "model/surface.hpp"

#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

namespace pelt::test {

/// Points and triangles without their loops.
struct Mesh {
    std::vector<Point3> points;
    std::vector<Triangle> triangles;
};

/// Angle along the equator (radians) and share of the way to the rim, to a place.
using Polar = std::function<Point3(double angle, double share)>;

/// A disc of `rings` rings, ring i with 6 i points: 6 rings² triangles, counter-clockwise where
/// `place` keeps the plane's sense.
inline Mesh disc(int rings, const Polar& place) {
    Mesh mesh;
    const auto first = [](int ring) { return ring == 0 ? 0 : 1 + 3 * ring * (ring - 1); };
    for (int i = 0; i <= rings; ++i)
        for (int k = 0; k < std::max(1, 6 * i); ++k)
            mesh.points.push_back(place(2 * std::numbers::pi * k / std::max(1, 6 * i),
                                        static_cast<double>(i) / rings));
    for (int i = 1; i <= rings; ++i)
        for (int sector = 0; sector < 6; ++sector)
            for (int k = 0; k < i; ++k) {
                const auto outer = [&](int j) { return first(i) + (sector * i + j) % (6 * i); };
                const auto inner = [&](int j) {
                    return i == 1 ? 0 : first(i - 1) + (sector * (i - 1) + j) % (6 * (i - 1));
                };
                mesh.triangles.push_back({outer(k), outer(k + 1), inner(k)});
                if (k + 1 < i)
                    mesh.triangles.push_back({inner(k), outer(k + 1), inner(k + 1)});
            }
    return mesh;
}

/// A cap of a sphere, `half_angle` radians from its pole to its rim, equal arcs between rings.
inline Mesh cap(double radius, double half_angle, int rings) {
    return disc(rings, [=](double angle, double share) {
        const double t = half_angle * share;
        return Point3{radius * std::sin(t) * std::cos(angle),
                      radius * std::sin(t) * std::sin(angle), radius * std::cos(t)};
    });
}

using Place = std::function<Point3(double u, double v)>;

/// A grid of `across` × `up` cells over [0, 1]², two triangles each, diagonals alternating.
inline Mesh grid(int across, int up, const Place& place) {
    Mesh mesh;
    for (int j = 0; j <= up; ++j)
        for (int i = 0; i <= across; ++i)
            mesh.points.push_back(
                place(static_cast<double>(i) / across, static_cast<double>(j) / up));
    for (int j = 0; j < up; ++j)
        for (int i = 0; i < across; ++i) {
            const int a = j * (across + 1) + i;
            const int b = a + 1;
            const int c = a + across + 2;
            const int d = a + across + 1;
            if ((i + j) % 2 == 0) {
                mesh.triangles.push_back({a, b, c});
                mesh.triangles.push_back({a, c, d});
            } else {
                mesh.triangles.push_back({a, b, d});
                mesh.triangles.push_back({b, c, d});
            }
        }
    return mesh;
}

/// The height of a circular arc over its chord's middle line, `s` of the arc from its middle.
struct ArcPlace {
    double along = 0; ///< the chord
    double height = 0;
};
inline ArcPlace on_arc(double chord, double rise, double share) {
    if (rise == 0)
        return {chord * (share - .5), 0};
    const double h = std::abs(rise);
    const double radius = (chord * chord / 4 + h * h) / (2 * h);
    const double angle = 4 * std::atan(2 * h / chord) * (share - .5);
    const double height = radius * std::cos(angle) - radius + h;
    return {radius * std::sin(angle), rise > 0 ? height : -height};
}

/// An arc moved along another arc: a crown of two chords and rises. Equal arcs between lines.
inline Mesh crown(double chord_x, double rise_x, double chord_y, double rise_y, int across,
                  int up) {
    return grid(across, up, [=](double u, double v) {
        const ArcPlace x = on_arc(chord_x, rise_x, u);
        const ArcPlace y = on_arc(chord_y, rise_y, v);
        return Point3{x.along, y.along, x.height + y.height};
    });
}

/// The height of a circular arc, at most half a circle, over a place `at` on its chord from the
/// middle.
inline double height_at(double at, double chord, double rise) {
    if (rise == 0)
        return 0;
    const double h = std::abs(rise);
    const double radius = (chord * chord / 4 + h * h) / (2 * h);
    return std::copysign(std::sqrt(radius * radius - at * at) - radius + h, rise);
}

/// A crown over an ellipse that fills its two chords.
inline Mesh crown_over_ellipse(double chord_x, double rise_x, double chord_y, double rise_y,
                               int rings) {
    return disc(rings, [=](double angle, double share) {
        const double x = chord_x / 2 * share * std::cos(angle);
        const double y = chord_y / 2 * share * std::sin(angle);
        return Point3{x, y, height_at(x, chord_x, rise_x) + height_at(y, chord_y, rise_y)};
    });
}

} // namespace pelt::test
