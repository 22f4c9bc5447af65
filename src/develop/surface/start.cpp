// SPDX-License-Identifier: MIT
#include "develop/surface/start.hpp"

#include "geometry/space.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>
#include <utility>

namespace pelt::develop {
namespace {

int farthest_from(int from, const std::vector<Point3>& points, const std::vector<int>& loop) {
    const Point3 p = points[static_cast<std::size_t>(from)];
    return *std::max_element(loop.begin(), loop.end(), [&](int a, int b) {
        return geometry::distance(p, points[static_cast<std::size_t>(a)]) <
               geometry::distance(p, points[static_cast<std::size_t>(b)]);
    });
}

/// Symmetric equations in which some unknowns have given values.
class Held {
public:
    explicit Held(int unknowns)
        : place_(static_cast<std::size_t>(unknowns), 0), value_(place_.size(), 0) {}

    void hold(int unknown, double value) {
        place_[static_cast<std::size_t>(unknown)] = -1;
        value_[static_cast<std::size_t>(unknown)] = value;
    }

    /// Solves A x = 0 but for what is held, A given as Factor::of takes it.
    std::optional<std::vector<double>> solve(const std::vector<Entry>& entries) {
        int free = 0;
        for (int& place : place_)
            if (place == 0)
                place = free++;
        std::vector<double> b(static_cast<std::size_t>(free), 0);
        std::vector<Entry> kept;
        kept.reserve(entries.size());
        for (const Entry& e : entries) {
            const auto r = static_cast<std::size_t>(e.row);
            const auto c = static_cast<std::size_t>(e.column);
            if (place_[r] >= 0 && place_[c] >= 0)
                kept.push_back(
                    {std::max(place_[r], place_[c]), std::min(place_[r], place_[c]), e.value});
            else if (place_[r] >= 0)
                b[static_cast<std::size_t>(place_[r])] -= e.value * value_[c];
            else if (place_[c] >= 0)
                b[static_cast<std::size_t>(place_[c])] -= e.value * value_[r];
        }
        const auto factor = Factor::of(free, kept);
        if (!factor)
            return std::nullopt;
        const std::vector<double> x = factor->solve(b);
        std::vector<double> out = value_;
        for (std::size_t i = 0; i < out.size(); ++i)
            if (place_[i] >= 0)
                out[i] = x[static_cast<std::size_t>(place_[i])];
        return out;
    }

private:
    std::vector<int> place_; ///< among the free unknowns; -1: held
    std::vector<double> value_;
};

void add(std::vector<Entry>& entries, int a, int b, double value) {
    if (a >= b)
        entries.push_back({a, b, value});
}

/// Sum of area times |sum of gradient times U / 2|², with unknown 2 k the real part of U at point k
/// and 2 k + 1 the imaginary one.
std::vector<Entry> conformal_energy(const Patch& patch) {
    std::vector<Entry> entries;
    entries.reserve(21 * patch.facets().size());
    for (const Facet& f : patch.facets())
        for (std::size_t i = 0; i < 3; ++i)
            for (std::size_t j = 0; j < 3; ++j) {
                const Cx h = (f.area / 4) * (conjugate(f.gradient[i]) * f.gradient[j]);
                const int a = 2 * f.corners[i];
                const int b = 2 * f.corners[j];
                add(entries, a, b, h.re);
                add(entries, a + 1, b + 1, h.re);
                add(entries, a, b + 1, -h.im);
                add(entries, a + 1, b, h.im);
            }
    return entries;
}

/// Not mirrored, lengths right on the whole, point 0 at 0.
Flat settled(const Patch& patch, Flat flat) {
    std::vector<Linear> maps = patch.maps(flat);
    double turned = 0;
    for (std::size_t t = 0; t < maps.size(); ++t)
        turned += patch.facets()[t].area * maps[t].larger() * maps[t].smaller();
    if (turned < 0) {
        for (Cx& u : flat)
            u = conjugate(u);
        maps = patch.maps(flat);
    }
    double sum = 0;
    double squares = 0;
    for (std::size_t t = 0; t < maps.size(); ++t) {
        const double a = maps[t].larger();
        const double b = maps[t].smaller();
        sum += patch.facets()[t].area * (a + b);
        squares += patch.facets()[t].area * (a * a + b * b);
    }
    return from_origin(scaled(std::move(flat), sum > 0 ? sum / squares : 1));
}

} // namespace

std::optional<Flat> seen_from_outside(const Patch& patch, const std::vector<Point3>& points) {
    constexpr double least_cosine = .5;
    std::vector<Point3> doubled;
    Point3 sum;
    for (const Facet& f : patch.facets()) {
        const auto at = [&](std::size_t k) {
            return points[static_cast<std::size_t>(f.corners[k])];
        };
        doubled.push_back(geometry::cross(at(1) - at(0), at(2) - at(0)));
        sum = sum + doubled.back();
    }
    const Point3 out = geometry::unit(sum);
    for (const Point3& normal : doubled)
        if (!(geometry::dot(normal, out) > least_cosine * geometry::norm(normal)))
            return std::nullopt;
    const Point3 other = std::abs(out.x) < .7 ? Point3{1, 0, 0} : Point3{0, 1, 0};
    const Point3 x = geometry::unit(geometry::cross(other, out));
    const Point3 y = geometry::cross(out, x);
    Flat flat;
    for (const Point3& p : points)
        flat.push_back({geometry::dot(p, x), geometry::dot(p, y)});
    return settled(patch, std::move(flat));
}

std::optional<Flat> conformal(const Patch& patch, const std::vector<Point3>& points,
                              const std::vector<int>& loop) {
    const int one = farthest_from(loop.front(), points, loop);
    const int other = farthest_from(one, points, loop);
    Held system(2 * patch.points());
    system.hold(2 * one, 0);
    system.hold(2 * one + 1, 0);
    system.hold(2 * other, geometry::distance(points[static_cast<std::size_t>(one)],
                                              points[static_cast<std::size_t>(other)]));
    system.hold(2 * other + 1, 0);
    const auto x = system.solve(conformal_energy(patch));
    if (!x)
        return std::nullopt;
    Flat flat(points.size());
    for (std::size_t i = 0; i < flat.size(); ++i)
        flat[i] = {(*x)[2 * i], (*x)[2 * i + 1]};
    return settled(patch, std::move(flat));
}

std::optional<Flat> on_a_disc(const Patch& patch, const std::vector<Point3>& points,
                              const std::vector<int>& loop) {
    double length = 0;
    std::vector<double> at;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        at.push_back(length);
        length += geometry::distance(points[static_cast<std::size_t>(loop[i])],
                                     points[static_cast<std::size_t>(loop[(i + 1) % loop.size()])]);
    }
    const double radius = std::sqrt(patch.area() / std::numbers::pi);
    Held across(patch.points());
    Held up(patch.points());
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const double angle = 2 * std::numbers::pi * at[i] / length;
        across.hold(loop[i], radius * std::cos(angle));
        up.hold(loop[i], radius * std::sin(angle));
    }
    std::set<std::pair<int, int>> sides;
    for (const Facet& f : patch.facets())
        for (std::size_t k = 0; k < 3; ++k)
            sides.insert(std::minmax(f.corners[k], f.corners[(k + 1) % 3]));
    std::vector<Entry> entries;
    for (const auto& [a, b] : sides) {
        entries.push_back({a, a, 1});
        entries.push_back({b, b, 1});
        entries.push_back({b, a, -1});
    }
    const auto x = across.solve(entries);
    const auto y = up.solve(entries);
    if (!x || !y)
        return std::nullopt;
    Flat flat(points.size());
    for (std::size_t i = 0; i < flat.size(); ++i)
        flat[i] = {(*x)[i], (*y)[i]};
    return from_origin(std::move(flat));
}

} // namespace pelt::develop
