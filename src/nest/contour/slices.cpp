// SPDX-License-Identifier: MIT
#include "nest/contour/slices.hpp"

#include "geometry/geometry.hpp"
#include "nest/contour/vec.hpp"

#include <algorithm>

namespace pelt::nest::contour {
namespace {

// Corners of the grown region are rounded to the grid; this much less reach keeps them within.
constexpr double rounding_um = 1.5;
constexpr int arc_pieces = 4;

struct Edge {
    Vec a;
    Vec b;
};

std::vector<Edge> edges_of(const std::vector<Polygon>& polygons) {
    std::vector<Edge> edges;
    const auto add = [&edges](const Ring& ring) {
        for (std::size_t i = 0; i < ring.size(); ++i)
            edges.push_back({vec_of(ring[i]), vec_of(ring[(i + 1) % ring.size()])});
    };
    for (const Polygon& polygon : polygons) {
        add(polygon.outer);
        for (const Ring& hole : polygon.holes)
            add(hole);
    }
    return edges;
}

double height_at(const Edge& edge, double x) {
    return edge.a.y + (edge.b.y - edge.a.y) * ((x - edge.a.x) / (edge.b.x - edge.a.x));
}

GridPoint rounded(Vec p) {
    return {std::llround(p.x), std::llround(p.y)};
}

Vec right_normal(Vec a, Vec b) {
    const Vec d = b - a;
    const double length = norm(d);
    return {d.y / length, -d.x / length};
}

// Round an outward corner at b; back through b where the fan has no area.
void add_corner(Vec b, Vec out, Vec next, double reach, Ring& curve) {
    Ring fan{rounded(b)};
    for (int k = 0; k <= arc_pieces; ++k) {
        const double share = static_cast<double>(k) / arc_pieces;
        const Vec between = (1 - share) * out + share * next;
        const double length = norm(between);
        if (length > 1e-3)
            fan.push_back(rounded(b + (reach / length) * between));
    }
    if (doubled_area(fan) > 0)
        curve.insert(curve.end(), fan.begin() + 1, fan.end());
    else
        curve.push_back(rounded(b));
}

// The ring moved out: every side along its normal, a fan round every outward corner, back through
// the corner at a hollow one. As a cycle this is the ring, the bands beside its sides and the fans
// added up, so it winds round a point as often as they cover it.
Ring moved_out(const Ring& ring, double reach) {
    Ring curve;
    const std::size_t n = ring.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Vec a = vec_of(ring[i]);
        const Vec b = vec_of(ring[(i + 1) % n]);
        const Vec c = vec_of(ring[(i + 2) % n]);
        const Vec out = right_normal(a, b);
        curve.push_back(rounded(a + reach * out));
        curve.push_back(rounded(b + reach * out));
        if (cross(b - a, c - b) > 0)
            add_corner(b, out, right_normal(b, c), reach, curve);
        else
            curve.push_back(rounded(b));
    }
    return curve;
}

} // namespace

std::vector<Slice> slices_of(const std::vector<Polygon>& polygons) {
    const std::vector<Edge> edges = edges_of(polygons);
    std::vector<double> stops;
    for (const Edge& edge : edges)
        stops.push_back(edge.a.x);
    std::sort(stops.begin(), stops.end());
    stops.erase(std::unique(stops.begin(), stops.end()), stops.end());
    std::vector<Slice> slices;
    for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
        Slice slice{stops[k + 1] - stops[k], 0, 0};
        for (const Edge& edge : edges) {
            const bool backward = edge.b.x < edge.a.x;
            const double low = backward ? edge.b.x : edge.a.x;
            const double high = backward ? edge.a.x : edge.b.x;
            if (low > stops[k] || high < stops[k + 1] || low == high)
                continue;
            // The region lies on the left: below what runs backward, above what runs forward.
            const double sign = backward ? 1 : -1;
            slice.across_from += sign * height_at(edge, stops[k]);
            slice.across_to += sign * height_at(edge, stops[k + 1]);
        }
        slices.push_back(slice);
    }
    return slices;
}

std::vector<Polygon> grown_within(const Polygon& polygon, double reach) {
    const double safe = reach - rounding_um;
    if (safe <= 0)
        return {polygon};
    std::vector<Ring> curves{moved_out(polygon.outer, safe)};
    for (const Ring& hole : polygon.holes)
        curves.push_back(moved_out(hole, safe));
    return geometry::positive_union(curves);
}

} // namespace pelt::nest::contour
