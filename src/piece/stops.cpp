// SPDX-License-Identifier: MIT
#include "piece/stops.hpp"

#include "geometry/geometry.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::piece {
namespace {

/// Bands begin this far outside the edge, so that rounding leaves no sliver along it; mm.
constexpr double outside_mm = 0.002;

struct Segment {
    Point from;
    Point to;
    Point way; ///< unit vector
    double move = 0;
    double stop = 0;
};

Point moved(Point p, Point way, double distance) {
    return {p.x + distance * way.x, p.y + distance * way.y};
}

Point inward(Point way) {
    return {-way.y, way.x};
}

Point reversed(Point way) {
    return {-way.x, -way.y};
}

std::vector<Segment> segments_of(const TaggedRing& outline, const std::vector<EdgeWork>& work) {
    std::vector<Segment> segments;
    const std::size_t n = outline.points.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point a = outline.points[i];
        const Point b = outline.points[(i + 1) % n];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        const EdgeWork& edge = work[static_cast<std::size_t>(outline.edge[i])];
        if (length > 0)
            segments.push_back({a,
                                b,
                                {(b.x - a.x) / length, (b.y - a.y) / length},
                                static_cast<double>(edge.move) / um_per_mm,
                                static_cast<double>(edge.stop) / um_per_mm});
    }
    return segments;
}

/// How far the film that was added at a corner reaches past it, along `way`.
double added(const Segment& before, const Segment& after, Point way) {
    double farthest = 0;
    for (const Point& p :
         geometry::grown_corner(before.to, {before.way, before.move}, {after.way, after.move}))
        farthest = std::max(farthest, (p.x - before.to.x) * way.x + (p.y - before.to.y) * way.y);
    return farthest;
}

double longer_by(const Segment& before, const Segment& after, Point way) {
    const double turn = before.way.x * after.way.y - before.way.y * after.way.x;
    return turn > 0 ? added(before, after, way) : 0;
}

/// The outer side of the strips along segments first … last, just outside the edge.
void add_near_side(const std::vector<Segment>& run, double longer_before, double longer_after,
                   std::vector<Point>& points) {
    for (std::size_t i = 0; i < run.size(); ++i) {
        const Segment& segment = run[i];
        const Point a = i == 0 ? moved(segment.from, segment.way, -longer_before) : segment.from;
        const Point b =
            i + 1 == run.size() ? moved(segment.to, segment.way, longer_after) : segment.to;
        points.push_back(moved(a, inward(segment.way), -outside_mm));
        points.push_back(moved(b, inward(segment.way), -outside_mm));
    }
}

/// Where the strips of two neighbours meet inside: the corner of geometry/grow.hpp on the way back.
void add_inner_corner(const Segment& before, const Segment& after, std::vector<Point>& points) {
    const std::vector<Point> corner = geometry::grown_corner(
        before.to, {reversed(after.way), after.stop}, {reversed(before.way), before.stop});
    points.insert(points.end(), corner.begin(), corner.end());
}

/// The band along a run of neighbouring segments with stops; `before` and `after` have none.
Ring band(const Segment& before, const std::vector<Segment>& run, const Segment& after) {
    const Segment& first = run.front();
    const Segment& last = run.back();
    const double longer_before = longer_by(before, first, reversed(first.way));
    const double longer_after = longer_by(last, after, last.way);
    std::vector<Point> points;
    add_near_side(run, longer_before, longer_after, points);
    points.push_back(moved(moved(last.to, last.way, longer_after), inward(last.way), last.stop));
    for (std::size_t i = run.size() - 1; i > 0; --i)
        add_inner_corner(run[i - 1], run[i], points);
    points.push_back(
        moved(moved(first.from, first.way, -longer_before), inward(first.way), first.stop));
    return geometry::on_grid(points);
}

/// The band where every segment has a stop: the whole outline, and what lies within the stops as a
/// curve the other way round.
std::vector<Ring> closed_band(const std::vector<Segment>& segments) {
    std::vector<Point> near_side;
    add_near_side(segments, 0, 0, near_side);
    std::vector<Point> far_side;
    for (std::size_t i = segments.size(); i > 0; --i)
        add_inner_corner(segments[(i + segments.size() - 1) % segments.size()],
                         segments[i % segments.size()], far_side);
    return {geometry::on_grid(near_side), geometry::on_grid(far_side)};
}

} // namespace

std::vector<Polygon> stop_bands(const TaggedRing& outline, const std::vector<EdgeWork>& work) {
    std::vector<Segment> segments = segments_of(outline, work);
    const auto goes_on = std::find_if(segments.begin(), segments.end(),
                                      [](const Segment& segment) { return segment.stop == 0; });
    if (goes_on == segments.end())
        return geometry::positive_union(closed_band(segments));
    std::rotate(segments.begin(), goes_on, segments.end());
    std::vector<Ring> rings;
    for (std::size_t i = 1; i < segments.size(); ++i) {
        std::vector<Segment> run;
        const Segment& before = segments[i - 1];
        for (; i < segments.size() && segments[i].stop > 0; ++i)
            run.push_back(segments[i]);
        if (!run.empty())
            rings.push_back(band(before, run, segments[i % segments.size()]));
    }
    return geometry::positive_union(rings);
}

} // namespace pelt::piece
