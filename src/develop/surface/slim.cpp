// SPDX-License-Identifier: MIT
#include "develop/surface/slim.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace pelt::develop {
namespace {

double energy_of(double s) {
    return s * s + 1 / (s * s);
}

/// Divided by the area; infinite where a triangle is turned over.
double energy_of(const Patch& patch, const std::vector<Linear>& maps) {
    double sum = 0;
    for (std::size_t t = 0; t < maps.size(); ++t) {
        const double smaller = maps[t].smaller();
        if (!(smaller > 0))
            return std::numeric_limits<double>::infinity();
        sum += patch.facets()[t].area * (energy_of(maps[t].larger()) + energy_of(smaller) - 4);
    }
    return sum / patch.area();
}

/// The square of the weight that makes a quadratic proxy fall as the energy does.
double weight_squared(double s) {
    constexpr double near_one = 1e-5;
    if (std::abs(s - 1) < near_one)
        return 4;
    return (s - 1 / (s * s * s)) / (s - 1);
}

/// A symmetric 2 × 2 matrix.
struct Weight {
    double xx = 0;
    double xy = 0;
    double yy = 0;
};

/// W², W with the singular directions of the map on the side of the layout.
Weight weight_of(const Linear& map) {
    const double large = weight_squared(map.larger());
    const double small = weight_squared(map.smaller());
    // The direction of the larger value is at half the angle of z w: cos² and cos sin of it.
    const Cx doubled = unit(map.z * map.w);
    const double c2 = (1 + doubled.re) / 2;
    const double cs = doubled.im / 2;
    return {large * c2 + small * (1 - c2), (large - small) * cs, large * (1 - c2) + small * c2};
}

double product(Cx a, Cx b) {
    return a.re * b.re + a.im * b.im;
}

void add(std::vector<Entry>& entries, int a, int b, double value) {
    if (a >= b)
        entries.push_back({a, b, value});
}

/// The layout whose maps are nearest to their rotations, differences weighted; point 0 at 0.
std::optional<Flat> nearest_weighted(const Patch& patch, const std::vector<Linear>& maps) {
    const auto n = static_cast<std::size_t>(patch.points());
    std::vector<Entry> entries;
    entries.reserve(21 * maps.size());
    std::vector<double> b(2 * n - 2, 0);
    for (std::size_t t = 0; t < maps.size(); ++t) {
        const Facet& f = patch.facets()[t];
        const Weight weight = weight_of(maps[t]);
        const Cx turn = unit(maps[t].z);
        for (std::size_t i = 0; i < 3; ++i) {
            const int row = 2 * (f.corners[i] - 1);
            if (row < 0)
                continue;
            for (std::size_t j = 0; j < 3; ++j) {
                const int column = 2 * (f.corners[j] - 1);
                const double k = f.area * product(f.gradient[i], f.gradient[j]);
                if (column < 0)
                    continue;
                add(entries, row, column, k * weight.xx);
                add(entries, row + 1, column + 1, k * weight.yy);
                add(entries, row + 1, column, k * weight.xy);
                add(entries, row, column + 1, k * weight.xy);
            }
            // The columns of the rotation are `turn` and i `turn`.
            const Cx wanted =
                f.area * (f.gradient[i].re * turn + f.gradient[i].im * (Cx{0, 1} * turn));
            b[static_cast<std::size_t>(row)] += weight.xx * wanted.re + weight.xy * wanted.im;
            b[static_cast<std::size_t>(row) + 1] += weight.xy * wanted.re + weight.yy * wanted.im;
        }
    }
    const auto factor = Factor::of(static_cast<int>(2 * n - 2), entries);
    if (!factor)
        return std::nullopt;
    const std::vector<double> x = factor->solve(b);
    Flat flat(n);
    for (std::size_t i = 1; i < n; ++i)
        flat[i] = {x[2 * i - 2], x[2 * i - 1]};
    return flat;
}

/// The smallest positive root of a t² + b t + c, c > 0; infinite where there is none.
double first_root(double a, double b, double c) {
    const double none = std::numeric_limits<double>::infinity();
    const double square = b * b - 4 * a * c;
    if (!(square >= 0))
        return none;
    // Both roots without cancellation: q / a and c / q.
    const double q = -(b + (b < 0 ? -std::sqrt(square) : std::sqrt(square))) / 2;
    double root = none;
    if (q != 0 && c / q > 0)
        root = c / q;
    if (a != 0 && q / a > 0)
        root = std::min(root, q / a);
    return root;
}

/// How far along `step` the first triangle closes (Smith and Schaefer 2015).
double first_closing(const std::vector<Linear>& maps, const std::vector<Linear>& step) {
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t t = 0; t < maps.size(); ++t) {
        const double a = product(step[t].z, step[t].z) - product(step[t].w, step[t].w);
        const double b = 2 * (product(maps[t].z, step[t].z) - product(maps[t].w, step[t].w));
        const double c = product(maps[t].z, maps[t].z) - product(maps[t].w, maps[t].w);
        nearest = std::min(nearest, first_root(a, b, c));
    }
    return nearest;
}

} // namespace

Symmetric least_symmetric(const Patch& patch, const Flat& start) {
    constexpr int most_rounds = 200;
    constexpr int most_halvings = 40;
    constexpr double settled = 1e-8;
    Symmetric out{from_origin(start), 0, 0};
    std::vector<Linear> maps = patch.maps(out.flat);
    out.energy = energy_of(patch, maps);
    while (out.rounds < most_rounds) {
        ++out.rounds;
        const auto target = nearest_weighted(patch, maps);
        if (!target)
            break;
        Flat step(target->size());
        for (std::size_t i = 0; i < step.size(); ++i)
            step[i] = (*target)[i] - out.flat[i];
        double length = std::min(1.0, .9 * first_closing(maps, patch.maps(step)));
        const double before = out.energy;
        for (int halving = 0; halving < most_halvings; ++halving, length /= 2) {
            Flat tried(step.size());
            for (std::size_t i = 0; i < step.size(); ++i)
                tried[i] = out.flat[i] + length * step[i];
            std::vector<Linear> tried_maps = patch.maps(tried);
            const double energy = energy_of(patch, tried_maps);
            if (energy < out.energy) {
                out.flat = std::move(tried);
                maps = std::move(tried_maps);
                out.energy = energy;
                break;
            }
        }
        if (!(before - out.energy > settled * before))
            break;
    }
    return out;
}

} // namespace pelt::develop
