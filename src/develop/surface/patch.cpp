// SPDX-License-Identifier: MIT
#include "develop/surface/patch.hpp"

#include "geometry/space.hpp"

#include <algorithm>
#include <utility>

namespace pelt::develop {
namespace {

using geometry::cross;
using geometry::dot;
using geometry::norm;

std::optional<Facet> facet_of(const std::vector<Point3>& points, const Triangle& t) {
    const Point3 origin = points[static_cast<std::size_t>(t[0])];
    const Point3 a = points[static_cast<std::size_t>(t[1])] - origin;
    const Point3 b = points[static_cast<std::size_t>(t[2])] - origin;
    const double l = norm(a);
    const double doubled = norm(cross(a, b));
    if (!(l > 0) || !(doubled > 0))
        return std::nullopt;
    const double p = dot(a, b) / l;
    const double q = doubled / l;
    return Facet{
        t, {Cx{-1 / l, (p - l) / (l * q)}, Cx{1 / l, -p / (l * q)}, Cx{0, 1 / q}}, doubled / 2};
}

double product(Cx a, Cx b) {
    return a.re * b.re + a.im * b.im;
}

/// The entries but for those of point 0, which is held.
std::vector<Entry> held_at_0(std::vector<Entry> entries) {
    std::erase_if(entries, [](const Entry& e) { return e.column == 0 || e.row == 0; });
    for (Entry& e : entries) {
        --e.row;
        --e.column;
    }
    return entries;
}

} // namespace

std::optional<std::vector<Facet>> facets_of(const std::vector<Point3>& points,
                                            const std::vector<Triangle>& triangles) {
    std::vector<Facet> facets;
    facets.reserve(triangles.size());
    for (const Triangle& t : triangles) {
        const std::optional<Facet> facet = facet_of(points, t);
        if (!facet)
            return std::nullopt;
        facets.push_back(*facet);
    }
    return facets;
}

std::vector<Entry> laplacian_of(const std::vector<Facet>& facets) {
    std::vector<Entry> entries;
    entries.reserve(6 * facets.size());
    for (const Facet& f : facets)
        for (std::size_t i = 0; i < 3; ++i)
            for (std::size_t j = 0; j <= i; ++j) {
                const double value = f.area * product(f.gradient[i], f.gradient[j]);
                entries.push_back({std::max(f.corners[i], f.corners[j]),
                                   std::min(f.corners[i], f.corners[j]), value});
            }
    return entries;
}

Patch::Patch(int points, std::vector<Facet> facets, Factor laplacian, std::size_t own)
    : points_(points), own_(own), facets_(std::move(facets)), laplacian_(std::move(laplacian)),
      area_(0) {
    for (std::size_t t = 0; t < own_; ++t)
        area_ += facets_[t].area;
}

std::optional<Patch> Patch::of(const std::vector<Point3>& points,
                               const std::vector<Triangle>& triangles, std::size_t own) {
    auto facets = facets_of(points, triangles);
    if (!facets || facets->empty() || own == 0)
        return std::nullopt;
    // Lids must not hold back what is around them.
    constexpr double slack = 1e-5;
    for (std::size_t t = own; t < facets->size(); ++t)
        (*facets)[t].area *= slack;
    const int n = static_cast<int>(points.size());
    auto factor = Factor::of(n - 1, held_at_0(laplacian_of(*facets)));
    if (!factor)
        return std::nullopt;
    return Patch(n, std::move(*facets), std::move(*factor), own);
}

void Patch::maps(const Flat& flat, std::vector<Linear>& out) const {
    out.resize(facets_.size());
    for (std::size_t t = 0; t < facets_.size(); ++t) {
        const Facet& f = facets_[t];
        // Ux - i Uy and Ux + i Uy are the sums of conj(gradient) U and of gradient U.
        Cx z;
        Cx w;
        for (std::size_t k = 0; k < 3; ++k) {
            const Cx u = flat[static_cast<std::size_t>(f.corners[k])];
            z = z + conjugate(f.gradient[k]) * u;
            w = w + f.gradient[k] * u;
        }
        out[t] = {.5 * z, .5 * w};
    }
}

std::vector<Linear> Patch::maps(const Flat& flat) const {
    std::vector<Linear> out;
    maps(flat, out);
    return out;
}

Flat Patch::nearest_to(const std::vector<Linear>& wanted) const {
    const auto n = static_cast<std::size_t>(points_);
    std::vector<Cx> b(n);
    for (std::size_t t = 0; t < facets_.size(); ++t) {
        const Facet& f = facets_[t];
        const Cx z = f.area * wanted[t].z;
        const Cx w = f.area * wanted[t].w;
        // gx (z + w) + gy i (z - w)
        for (std::size_t k = 0; k < 3; ++k) {
            Cx& at = b[static_cast<std::size_t>(f.corners[k])];
            at = at + f.gradient[k] * z + conjugate(f.gradient[k]) * w;
        }
    }
    b.erase(b.begin());
    Flat flat = laplacian_.solve(b);
    flat.insert(flat.begin(), Cx{});
    return flat;
}

int turned_over(const Patch& patch, const std::vector<Linear>& maps) {
    const auto end = maps.begin() + static_cast<std::ptrdiff_t>(patch.own());
    return static_cast<int>(
        std::count_if(maps.begin(), end, [](const Linear& m) { return !(m.smaller() > 0); }));
}

namespace {

/// The factor that is exceeded on the rest of the area only.
double trusted_largest(const Patch& patch, const std::vector<Linear>& maps) {
    struct Spread {
        double factor;
        double area;
    };
    std::vector<Spread> all;
    for (std::size_t t = 0; t < patch.own(); ++t)
        all.push_back({maps[t].larger(), patch.facets()[t].area});
    const auto less = [](const Spread& a, const Spread& b) { return a.factor < b.factor; };
    std::make_heap(all.begin(), all.end(), less);
    double left_out = 0;
    while (all.size() > 1) {
        left_out += all.front().area;
        if (left_out > (1 - patch.trusted()) * patch.area())
            break;
        std::pop_heap(all.begin(), all.end(), less);
        all.pop_back();
    }
    return all.front().factor;
}

} // namespace

Range range_of(const Patch& patch, const std::vector<Linear>& maps) {
    Range range{maps.front().larger(), maps.front().smaller()};
    for (std::size_t t = 0; t < patch.own(); ++t) {
        const double z = size(maps[t].z);
        const double w = size(maps[t].w);
        range.largest = std::max(range.largest, z + w);
        range.smallest = std::min(range.smallest, z - w);
    }
    if (patch.trusted() < 1)
        range.largest = trusted_largest(patch, maps);
    return range;
}

Flat scaled(Flat flat, double factor) {
    for (Cx& u : flat)
        u = factor * u;
    return flat;
}

Flat from_origin(Flat flat) {
    const Cx origin = flat.front();
    for (Cx& u : flat)
        u = u - origin;
    return flat;
}

} // namespace pelt::develop
