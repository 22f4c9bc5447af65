// SPDX-License-Identifier: MIT
#include "develop/surface/roof.hpp"

#include "geometry/mesh/mesh.hpp"
#include "geometry/space.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pelt::develop {
namespace {

std::size_t index(int i) {
    return static_cast<std::size_t>(i);
}

std::vector<int> boundary_of(const Sheet3& sheet) {
    std::vector<int> boundary = sheet.outline;
    boundary.insert(boundary.end(), sheet.rims.begin(), sheet.rims.end());
    return boundary;
}

/// 2 pi less the angles around each point; 0 on the outline and on rims.
std::vector<double> defects(const Sheet3& sheet) {
    std::vector<double> defect(sheet.points.size(), 2 * std::numbers::pi);
    for (const Triangle& t : sheet.triangles)
        for (std::size_t k = 0; k < 3; ++k) {
            const Point3 at = sheet.points[index(t[k])];
            const Point3 a = sheet.points[index(t[(k + 1) % 3])] - at;
            const Point3 b = sheet.points[index(t[(k + 2) % 3])] - at;
            defect[index(t[k])] -=
                std::atan2(geometry::norm(geometry::cross(a, b)), geometry::dot(a, b));
        }
    for (const int i : boundary_of(sheet))
        defect[index(i)] = 0;
    return defect;
}

/// Solves with some points held at a value.
class Held {
public:
    Held(std::size_t points, const std::vector<int>& held) : place_(points, 0) {
        for (const int i : held)
            place_[index(i)] = -1;
        for (int& place : place_)
            if (place == 0)
                place = free_++;
    }

    /// A x = b at the free points, x = value at the held ones.
    std::optional<std::vector<double>> solve(const std::vector<Entry>& entries,
                                             const std::vector<double>& b, double value) const {
        std::vector<Entry> kept;
        std::vector<double> right(index(free_), 0);
        for (std::size_t i = 0; i < place_.size(); ++i)
            if (place_[i] >= 0)
                right[index(place_[i])] = b[i];
        for (const Entry& e : entries) {
            const int r = place_[index(e.row)];
            const int c = place_[index(e.column)];
            if (r >= 0 && c >= 0)
                kept.push_back({std::max(r, c), std::min(r, c), e.value});
            else if (r >= 0)
                right[index(r)] -= e.value * value;
            else if (c >= 0)
                right[index(c)] -= e.value * value;
        }
        if (free_ == 0)
            return std::nullopt;
        const auto factor = Factor::of(free_, kept);
        if (!factor)
            return std::nullopt;
        const std::vector<double> x = factor->solve(right);
        std::vector<double> out(place_.size(), value);
        for (std::size_t i = 0; i < out.size(); ++i)
            if (place_[i] >= 0)
                out[i] = x[index(place_[i])];
        return out;
    }

private:
    std::vector<int> place_;
    int free_ = 0;
};

/// Distance over the surface from some points.
std::optional<std::vector<double>> distances(const Sheet3& sheet, const Patch& patch,
                                             const std::vector<int>& from) {
    const std::size_t n = sheet.points.size();
    const std::vector<Entry> laplacian = laplacian_of(patch.facets());
    // Heat that spreads from there for a time of one mean triangle.
    std::vector<Entry> heat = laplacian;
    const double time = 2 * patch.area() / static_cast<double>(patch.facets().size());
    for (Entry& e : heat)
        e.value *= time;
    for (const Facet& f : patch.facets())
        for (const int corner : f.corners)
            heat.push_back({corner, corner, f.area / 3});
    const Held held(n, from);
    const auto warm = held.solve(heat, std::vector<double>(n, 0), 1);
    if (!warm)
        return std::nullopt;
    std::vector<double> source(n, 0);
    for (const Facet& f : patch.facets()) {
        Cx slope;
        for (std::size_t k = 0; k < 3; ++k)
            slope = slope + (*warm)[index(f.corners[k])] * f.gradient[k];
        const double steep = size(slope);
        if (!(steep > 0))
            continue;
        const Cx way = (-1 / steep) * slope;
        for (std::size_t k = 0; k < 3; ++k)
            source[index(f.corners[k])] +=
                f.area * (f.gradient[k].re * way.re + f.gradient[k].im * way.im);
    }
    return held.solve(laplacian, source, 0);
}

} // namespace

double total_curvature(const Sheet3& sheet) {
    double sum = 0;
    for (const double defect : defects(sheet))
        sum += defect;
    return sum;
}

std::optional<double> roof_bound(const Sheet3& sheet, const Patch& patch) {
    const auto distance = distances(sheet, patch, sheet.outline);
    if (!distance)
        return std::nullopt;
    const std::vector<double> defect = defects(sheet);
    double sum = 0;
    for (std::size_t i = 0; i < defect.size(); ++i)
        sum += defect[i] * (*distance)[i];
    return std::abs(sum) / geometry::length_of(sheet.points, sheet.outline);
}

std::optional<double> disc_bound(const Sheet3& sheet, const Patch& patch) {
    const std::vector<int> boundary = boundary_of(sheet);
    const auto inward = distances(sheet, patch, boundary);
    if (!inward)
        return std::nullopt;
    const auto middle = std::max_element(inward->begin(), inward->end()) - inward->begin();
    const auto outward = distances(sheet, patch, {static_cast<int>(middle)});
    if (!outward)
        return std::nullopt;
    double radius = (*outward)[index(sheet.outline.front())];
    for (const int i : boundary)
        radius = std::min(radius, (*outward)[index(i)]);
    const std::vector<double> defect = defects(sheet);
    // The circle's length by Gauss and Bonnet: 2 pi r less the curvature within times the way out.
    double sum = 0;
    for (std::size_t i = 0; i < defect.size(); ++i)
        sum += defect[i] * std::max(0.0, radius - (*outward)[i]);
    const double length = 2 * std::numbers::pi * radius - sum;
    if (!(radius > 0) || !(length > 0))
        return std::nullopt;
    // Positive curvature shortens the circle, negative lengthens it: to first order alike.
    return std::abs(sum) / std::max(length, 2 * std::numbers::pi * radius - std::abs(sum));
}

} // namespace pelt::develop
