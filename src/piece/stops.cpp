// SPDX-License-Identifier: MIT
#include "piece/stops.hpp"

#include "geometry/geometry.hpp"
#include "piece/stop_ends.hpp"

#include <algorithm>
#include <span>

namespace pelt::piece {
namespace {

Point moved(Point p, Point way, double distance) {
    return {p.x + distance * way.x, p.y + distance * way.y};
}

Point inward(Point way) {
    return {-way.y, way.x};
}

Point reversed(Point way) {
    return {-way.x, -way.y};
}

std::vector<WorkedSide> worked_sides(const TaggedRing& outline, const std::vector<EdgeWork>& work) {
    std::vector<WorkedSide> sides;
    for (const geometry::RingSide& side : geometry::sides_of(outline)) {
        const EdgeWork& edge = work[static_cast<std::size_t>(outline.edge[side.index])];
        sides.push_back({side, static_cast<double>(edge.move) / um_per_mm,
                         static_cast<double>(edge.stop) / um_per_mm});
    }
    return sides;
}

/// The sides first … last, which have stops.
using Run = std::span<const WorkedSide>;

/// The outer side of the strips along a run, just outside the edge.
void add_near_side(Run run, double longer_before, double longer_after, std::vector<Point>& points) {
    for (std::size_t i = 0; i < run.size(); ++i) {
        const geometry::RingSide& side = run[i].side;
        const Point a = i == 0 ? moved(side.from, side.begins, -longer_before) : side.from;
        const Point b = i + 1 == run.size() ? moved(side.to, side.ends, longer_after) : side.to;
        points.push_back(moved(a, inward(side.begins), -outside_mm));
        points.push_back(moved(b, inward(side.ends), -outside_mm));
    }
}

/// Where the strips of two neighbours meet inside: the corner of geometry/grow.hpp on the way back.
void add_inner_corner(const WorkedSide& before, const WorkedSide& after,
                      std::vector<Point>& points) {
    const Point v = before.side.to;
    if (after.side.bent)
        points.push_back(moved(v, inward(after.side.begins), after.stop));
    const std::vector<Point> corner = geometry::grown_corner(
        v, {reversed(after.side.begins), after.stop}, {reversed(before.side.ends), before.stop});
    points.insert(points.end(), corner.begin(), corner.end());
    if (before.side.bent)
        points.push_back(moved(v, inward(before.side.ends), before.stop));
}

/// The band along a run of neighbouring sides with stops, and what it takes of the tucks beside it.
void add_band(const std::vector<WorkedSide>& sides, std::size_t first, std::size_t last,
              std::vector<Ring>& rings) {
    const BandEnd before = band_end_before(sides, first);
    const BandEnd after = band_end_after(sides, last);
    const Run run(sides.begin() + static_cast<std::ptrdiff_t>(first), last - first + 1);
    const geometry::RingSide& begins = run.front().side;
    const geometry::RingSide& ends = run.back().side;
    std::vector<Point> points;
    add_near_side(run, before.longer, after.longer, points);
    points.push_back(
        moved(moved(ends.to, ends.ends, after.longer), inward(ends.ends), run.back().stop));
    for (std::size_t i = run.size() - 1; i > 0; --i)
        add_inner_corner(run[i - 1], run[i], points);
    points.push_back(moved(moved(begins.from, begins.begins, -before.longer), inward(begins.begins),
                           run.front().stop));
    rings.push_back(geometry::on_grid(points));
    for (const BandEnd* end : {&before, &after})
        for (const std::vector<Point>& tuck : end->tucks)
            rings.push_back(geometry::on_grid(tuck));
}

/// The band where every side has a stop: the whole outline, and what lies within the stops as a
/// curve the other way round.
std::vector<Ring> closed_band(const std::vector<WorkedSide>& sides) {
    std::vector<Point> near_side;
    add_near_side(sides, 0, 0, near_side);
    std::vector<Point> far_side;
    for (std::size_t i = sides.size(); i > 0; --i)
        add_inner_corner(sides[(i + sides.size() - 1) % sides.size()], sides[i % sides.size()],
                         far_side);
    return {geometry::on_grid(near_side), geometry::on_grid(far_side)};
}

} // namespace

std::vector<Polygon> stop_bands(const TaggedRing& outline, const std::vector<EdgeWork>& work) {
    std::vector<WorkedSide> sides = worked_sides(outline, work);
    const auto goes_on = std::find_if(sides.begin(), sides.end(),
                                      [](const WorkedSide& side) { return side.stop == 0; });
    if (goes_on == sides.end())
        return geometry::positive_union(closed_band(sides));
    std::rotate(sides.begin(), goes_on, sides.end());
    std::vector<Ring> rings;
    for (std::size_t i = 1; i < sides.size(); ++i) {
        if (sides[i].stop == 0)
            continue;
        const std::size_t first = i;
        while (i + 1 < sides.size() && sides[i + 1].stop > 0)
            ++i;
        add_band(sides, first, i, rings);
    }
    return geometry::positive_union(rings);
}

} // namespace pelt::piece
