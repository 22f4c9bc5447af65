// SPDX-License-Identifier: MIT
#include "develop/outline.hpp"

#include "develop/arc.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <string>

namespace pelt::develop {
namespace {

std::size_t next(const OutlineForm& form, std::size_t i) {
    return (i + 1) % form.segments.size();
}

/// Edge i, from point i+1 to the next one, as an arc; none where it is straight.
std::optional<Arc> arc_of(const OutlineForm& form, std::size_t i) {
    const OutlineSegment& segment = form.segments[next(form, i)];
    if (!segment.through)
        return std::nullopt;
    return arc_through(form.segments[i].to, *segment.through, segment.to);
}

void stretch_to(Extent& extent, Point p) {
    extent.low = {std::min(extent.low.x, p.x), std::min(extent.low.y, p.y)};
    extent.high = {std::max(extent.high.x, p.x), std::max(extent.high.y, p.y)};
}

Point reversed(Point way) {
    return {-way.x, -way.y};
}

TaggedRing as_typed(const OutlineForm& form, Point scale) {
    TaggedRing ring;
    for (std::size_t i = 0; i < form.segments.size(); ++i) {
        const Point to = form.segments[next(form, i)].to;
        const std::optional<Arc> arc = arc_of(form, i);
        std::vector<Point> points =
            arc ? flattened(*arc, to, scale) : std::vector{Point{to.x * scale.x, to.y * scale.y}};
        ring.edge.insert(ring.edge.end(), points.size(), static_cast<int>(i));
        ring.ways.resize(ring.edge.size());
        if (arc) {
            const EndWays ends = end_ways(*arc, scale);
            ring.ways[ring.ways.size() - points.size()].begins = ends.begins;
            ring.ways.back().ends = ends.ends;
        }
        ring.points.insert(ring.points.end(), points.begin(), points.end());
    }
    // So far point k ends segment k; the law of TaggedRing is that it begins it.
    std::rotate(ring.points.rbegin(), ring.points.rbegin() + 1, ring.points.rend());
    return ring;
}

bool is_clockwise(const OutlineForm& form) {
    return doubled_area(as_typed(form, {1, 1}).points) < 0;
}

} // namespace

Extent extent_of(const OutlineForm& form) {
    Extent extent{form.segments.front().to, form.segments.front().to};
    for (std::size_t i = 0; i < form.segments.size(); ++i) {
        stretch_to(extent, form.segments[i].to);
        if (const std::optional<Arc> arc = arc_of(form, i))
            for (const Point& p : turning_points(*arc))
                stretch_to(extent, p);
    }
    return extent;
}

TaggedRing flattened(const OutlineForm& form, Point scale, bool clockwise) {
    TaggedRing ring = as_typed(form, scale);
    if ((doubled_area(ring.points) < 0) != clockwise) {
        // Point 0 stays first; segment k now runs back along what was segment n-1-k.
        std::reverse(ring.points.begin() + 1, ring.points.end());
        std::reverse(ring.edge.begin(), ring.edge.end());
        std::reverse(ring.ways.begin(), ring.ways.end());
        for (EndWays& ways : ring.ways)
            ways = {reversed(ways.ends), reversed(ways.begins)};
    }
    return ring;
}

std::vector<BlankEdge> edges_of(const OutlineForm& form) {
    const double sense = is_clockwise(form) ? -1 : 1;
    std::vector<BlankEdge> edges;
    for (std::size_t i = 0; i < form.segments.size(); ++i) {
        const std::size_t j = next(form, i);
        const Point a = form.segments[i].to;
        const Point b = form.segments[j].to;
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        edges.push_back({std::to_string(i + 1) + "-" + std::to_string(j + 1),
                         form.segments[j].name,
                         {sense * (b.y - a.y) / length, sense * (a.x - b.x) / length},
                         false});
    }
    return edges;
}

bool is_circle(const OutlineForm& form) {
    const std::optional<Arc> first = arc_of(form, 0);
    for (std::size_t i = 0; i < form.segments.size(); ++i) {
        const std::optional<Arc> arc = arc_of(form, i);
        if (!first || !arc ||
            std::hypot(arc->centre.x - first->centre.x, arc->centre.y - first->centre.y) >
                flattening_mm ||
            std::abs(arc->radius - first->radius) > flattening_mm)
            return false;
    }
    return true;
}

bool is_ellipse(const OutlineForm& form) {
    constexpr double few_hundredths = .04; // twelve corners on an ellipse are one
    const Extent extent = extent_of(form);
    const Point middle{(extent.low.x + extent.high.x) / 2, (extent.low.y + extent.high.y) / 2};
    const auto on_it = [&](Point p) {
        const double share = std::hypot(2 * (p.x - middle.x) / extent.wide(),
                                        2 * (p.y - middle.y) / extent.high_mm());
        return std::abs(share - 1) <= few_hundredths;
    };
    const std::vector<Point> ring = flattened(form, {1, 1}, false).points;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point& next = ring[(i + 1) % ring.size()];
        if (!on_it(ring[i]) || !on_it({(ring[i].x + next.x) / 2, (ring[i].y + next.y) / 2}))
            return false;
    }
    return true;
}

double doubled_area(const std::vector<Point>& ring) {
    const Point o = ring.front();
    double sum = 0;
    for (std::size_t i = 1; i + 1 < ring.size(); ++i)
        sum +=
            (ring[i].x - o.x) * (ring[i + 1].y - o.y) - (ring[i + 1].x - o.x) * (ring[i].y - o.y);
    return sum;
}

} // namespace pelt::develop
