// SPDX-License-Identifier: MIT
#include "develop/surface/lid.hpp"

#include "geometry/space.hpp"

#include <limits>
#include <utility>

namespace pelt::develop {
namespace {

/// Beyond this many points a fan does: the third power would take too long.
constexpr std::size_t longest = 600;

/// The area, a little for long sides, so that of equal areas the stouter triangles win, and much
/// for triangles that are next to none.
double cost_of(Point3 a, Point3 b, Point3 c) {
    constexpr double of_sides = .01;
    constexpr double next_to_none = 1e-6;
    const double area = geometry::norm(geometry::cross(b - a, c - a)) / 2;
    const double sides =
        geometry::dot(b - a, b - a) + geometry::dot(c - b, c - b) + geometry::dot(a - c, a - c);
    return area + of_sides * sides + (area < next_to_none * sides ? sides / next_to_none : 0);
}

} // namespace

std::vector<Triangle> lid_over(const std::vector<Point3>& points, const std::vector<int>& loop) {
    const std::size_t n = loop.size();
    const auto at = [&](std::size_t i) { return points[static_cast<std::size_t>(loop[i])]; };
    std::vector<Triangle> lid;
    // The lid is seen from outside too, so it runs against the loop.
    const auto add = [&](std::size_t i, std::size_t j, std::size_t k) {
        lid.push_back({loop[i], loop[k], loop[j]});
    };
    if (n > longest) {
        for (std::size_t k = 2; k < n; ++k)
            add(0, k - 1, k);
        return lid;
    }
    std::vector<double> least(n * n, 0);
    std::vector<std::size_t> split(n * n, 0);
    for (std::size_t span = 2; span < n; ++span)
        for (std::size_t i = 0; i + span < n; ++i) {
            double& best = least[i * n + i + span];
            best = std::numeric_limits<double>::infinity();
            for (std::size_t m = i + 1; m < i + span; ++m) {
                const double cost = least[i * n + m] + least[m * n + i + span] +
                                    cost_of(at(i), at(m), at(i + span));
                if (cost < best) {
                    best = cost;
                    split[i * n + i + span] = m;
                }
            }
        }
    std::vector<std::pair<std::size_t, std::size_t>> open{{0, n - 1}};
    while (!open.empty()) {
        const auto [i, k] = open.back();
        open.pop_back();
        if (k - i < 2)
            continue;
        const std::size_t m = split[i * n + k];
        add(i, m, k);
        open.emplace_back(i, m);
        open.emplace_back(m, k);
    }
    return lid;
}

} // namespace pelt::develop
