// SPDX-License-Identifier: MIT
// A surface of disc shape made ready to be laid flat: every triangle in coordinates of its own, and
// one factorised Laplacian that all methods share. Inside develop/ only.
#pragma once

#include "develop/surface/plane.hpp"
#include "develop/surface/sparse.hpp"
#include "model/surface.hpp"

#include <array>
#include <optional>
#include <vector>

namespace pelt::develop {

/// A triangle in its own plane: the gradients of the three functions that are 1 at one corner and 0
/// at the others, as complex numbers (d/dx + i d/dy), and its area.
struct Facet {
    Triangle corners;
    std::array<Cx, 3> gradient;
    double area = 0;
};

class Patch {
public:
    /// None where a triangle has no area or the Laplacian cannot be factorised. The first `own`
    /// triangles are the surface's; the others are lids, whose film is cut away: no stretch of
    /// theirs counts, and their areas are as good as nothing.
    static std::optional<Patch> of(const std::vector<Point3>& points,
                                   const std::vector<Triangle>& triangles, std::size_t own);
    static std::optional<Patch> of(const std::vector<Point3>& points,
                                   const std::vector<Triangle>& triangles) {
        return of(points, triangles, triangles.size());
    }

    int points() const { return points_; }
    const std::vector<Facet>& facets() const { return facets_; }
    std::size_t own() const { return own_; }
    /// Of the surface's own triangles.
    double area() const { return area_; }

    /// The share of the area whose largest factors count: 1, or a little less where the surface is
    /// a rough scan, of which single triangles say nothing.
    double trusted() const { return trusted_; }
    void trust(double share) { trusted_ = share; }

    /// What a flat layout does to every triangle.
    std::vector<Linear> maps(const Flat& flat) const;
    void maps(const Flat& flat, std::vector<Linear>& out) const;

    /// The layout whose maps are nearest to the wanted ones: least sum of area times squared
    /// difference. Point 0 lies at 0.
    Flat nearest_to(const std::vector<Linear>& wanted) const;

private:
    Patch(int points, std::vector<Facet> facets, Factor laplacian, std::size_t own);
    int points_;
    std::size_t own_;
    std::vector<Facet> facets_;
    Factor laplacian_;
    double area_;
    double trusted_ = 1;
};

/// The triangles of a surface as facets; none where one has no area.
std::optional<std::vector<Facet>> facets_of(const std::vector<Point3>& points,
                                            const std::vector<Triangle>& triangles);

/// The cotangent Laplacian (sum of area times gradient squared) of all points.
std::vector<Entry> laplacian_of(const std::vector<Facet>& facets);

/// Triangles of the surface's own that a layout turns over or closes up.
int turned_over(const Patch& patch, const std::vector<Linear>& maps);

/// The largest and the smallest factor by which a layout changes a length anywhere on the surface;
/// of the largest ones only what the patch trusts.
struct Range {
    double largest = 0;
    double smallest = 0;
    double ratio() const { return largest / smallest; }
};
Range range_of(const Patch& patch, const std::vector<Linear>& maps);

Flat scaled(Flat flat, double factor);
/// Moved so that point 0 lies at 0.
Flat from_origin(Flat flat);

} // namespace pelt::develop
