// SPDX-License-Identifier: MIT
#include "develop/surface/noise.hpp"

#include "geometry/space.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

namespace pelt::develop {
namespace {

using geometry::cross;
using geometry::dot;
using geometry::unit;

constexpr std::size_t unknowns = 6;
using Row = std::array<double, unknowns>;

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

using Rings = std::vector<std::vector<int>>;

Rings neighbours_of(const Surface& surface) {
    Rings out(surface.points.size());
    for (const Triangle& t : surface.triangles)
        for (std::size_t k = 0; k < 3; ++k) {
            out[index(t[k])].push_back(t[(k + 1) % 3]);
            out[index(t[k])].push_back(t[(k + 2) % 3]);
        }
    for (std::vector<int>& ring : out) {
        std::sort(ring.begin(), ring.end());
        ring.erase(std::unique(ring.begin(), ring.end()), ring.end());
    }
    return out;
}

/// Least squares by normal equations, Cholesky; none where they are singular.
std::optional<Row> solved(std::array<Row, unknowns> a, Row b) {
    for (std::size_t i = 0; i < unknowns; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double sum = a[i][j];
            for (std::size_t k = 0; k < j; ++k)
                sum -= a[i][k] * a[j][k];
            if (i == j && !(sum > 1e-12 * a[i][i]))
                return std::nullopt;
            a[i][j] = i == j ? std::sqrt(sum) : sum / a[j][j];
        }
        for (std::size_t k = 0; k < i; ++k)
            b[i] -= a[i][k] * b[k];
        b[i] /= a[i][i];
    }
    for (std::size_t i = unknowns; i-- > 0;) {
        for (std::size_t k = i + 1; k < unknowns; ++k)
            b[i] -= a[k][i] * b[k];
        b[i] /= a[i][i];
    }
    return b;
}

/// The mean square that a point and its two rings lie off their best quadric; none where they are
/// too few.
std::optional<double> square_off(const Surface& surface, const Rings& rings, int centre) {
    std::vector<int> near = rings[index(centre)];
    for (const int i : rings[index(centre)])
        near.insert(near.end(), rings[index(i)].begin(), rings[index(i)].end());
    near.push_back(centre);
    std::sort(near.begin(), near.end());
    near.erase(std::unique(near.begin(), near.end()), near.end());
    if (near.size() < unknowns + 4)
        return std::nullopt;
    const Point3 origin = surface.points[index(centre)];
    Point3 normal;
    const std::vector<int>& ring = rings[index(centre)];
    // The normal of the plane that fits, by the sum of all turned the same way as the first.
    for (std::size_t i = 0; i < ring.size(); ++i)
        for (std::size_t j = i + 1; j < ring.size(); ++j) {
            const Point3 n = cross(surface.points[index(ring[i])] - origin,
                                   surface.points[index(ring[j])] - origin);
            normal = normal + (dot(n, normal) < 0 ? -1.0 : 1.0) * n;
        }
    normal = unit(normal);
    const Point3 x =
        unit(cross(normal, std::abs(normal.x) < .7 ? Point3{1, 0, 0} : Point3{0, 1, 0}));
    const Point3 y = cross(normal, x);
    double scale = 0;
    for (const int i : near)
        scale = std::max(scale, geometry::distance(origin, surface.points[index(i)]));
    std::array<Row, unknowns> a{};
    Row b{};
    std::vector<Row> rows;
    std::vector<double> heights;
    for (const int i : near) {
        const Point3 d = (1 / scale) * (surface.points[index(i)] - origin);
        const double u = dot(d, x);
        const double v = dot(d, y);
        rows.push_back({1, u, v, u * u, u * v, v * v});
        heights.push_back(dot(d, normal));
        for (std::size_t j = 0; j < unknowns; ++j) {
            b[j] += rows.back()[j] * heights.back();
            for (std::size_t k = 0; k < unknowns; ++k)
                a[j][k] += rows.back()[j] * rows.back()[k];
        }
    }
    const auto c = solved(a, b);
    if (!c)
        return std::nullopt;
    double sum = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        double off = heights[i];
        for (std::size_t j = 0; j < unknowns; ++j)
            off -= (*c)[j] * rows[i][j];
        sum += off * off;
    }
    return scale * scale * sum / static_cast<double>(rows.size() - unknowns);
}

} // namespace

Roughness roughness_of(const Surface& surface) {
    constexpr std::size_t about = 5'000;
    Roughness out;
    const Rings rings = neighbours_of(surface);
    double length = 0;
    std::size_t edges = 0;
    for (std::size_t i = 0; i < rings.size(); ++i)
        for (const int j : rings[i]) {
            length += geometry::distance(surface.points[i], surface.points[index(j)]);
            ++edges;
        }
    out.spacing_mm = edges > 0 ? length / static_cast<double>(edges) : 0;
    std::vector<bool> on_loop(rings.size(), false);
    for (const std::vector<int>& loop : surface.loops)
        for (const int i : loop)
            on_loop[index(i)] = true;
    const std::size_t step = std::max<std::size_t>(1, rings.size() / about);
    std::vector<double> squares;
    for (std::size_t i = 0; i < rings.size(); i += step)
        if (!on_loop[i])
            if (const auto square = square_off(surface, rings, static_cast<int>(i)))
                squares.push_back(*square);
    if (squares.empty())
        return out;
    const auto middle = squares.begin() + static_cast<std::ptrdiff_t>(squares.size() / 2);
    std::nth_element(squares.begin(), middle, squares.end());
    out.noise_mm = std::sqrt(*middle);
    return out;
}

} // namespace pelt::develop
