// SPDX-License-Identifier: MIT
#include "verify/wanted.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::verify {
namespace {

struct Side2 {
    Point from;
    Point to;
    Point way; ///< unit vector
    double move = 0;
    double stop = 0;
};

double dot(Point a, Point b) {
    return a.x * b.x + a.y * b.y;
}
double cross(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}
Point outward(const Side2& side) {
    return {side.way.y, -side.way.x};
}
Point shifted(Point p, Point way, double by) {
    return {p.x + by * way.x, p.y + by * way.y};
}

Ring on_grid(const std::vector<Point>& points) {
    Ring ring;
    for (const Point& p : points)
        ring.push_back(nearest(p));
    return ring;
}

double mm(Um length) {
    return static_cast<double>(length) / um_per_mm;
}

/// Repeated points are passed over.
std::vector<Side2> sides_of(const std::vector<Point>& ring, const std::vector<double>& moves) {
    std::vector<Side2> sides;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point a = ring[i];
        const Point b = ring[i + 1 == ring.size() ? 0 : i + 1];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        if (length > 0)
            sides.push_back({a, b, {(b.x - a.x) / length, (b.y - a.y) / length}, moves[i], 0});
    }
    return sides;
}

/// The square cut of a far crossing: the moved sides end on the line across the bisector.
std::vector<Point> squared(Point v, const Side2& a, const Side2& b, double far) {
    Point middle{a.way.y + b.way.y, -a.way.x - b.way.x};
    const Point back{a.way.x - b.way.x, a.way.y - b.way.y};
    if (dot(back, back) > dot(middle, middle))
        middle = back;
    const double size = std::hypot(middle.x, middle.y);
    const Point bisector{middle.x / size, middle.y / size};
    std::vector<Point> out;
    for (const Side2* side : {&a, &b}) {
        const Point foot = shifted(v, outward(*side), side->move);
        const double missing = far - side->move * dot(outward(*side), bisector);
        out.push_back(shifted(foot, side->way, missing / dot(side->way, bisector)));
    }
    return out;
}

std::vector<Point> outward_corner(Point v, const Side2& a, const Side2& b) {
    const double sine = cross(a.way, b.way);
    const double cosine = dot(a.way, b.way);
    const Point p = shifted(v, outward(a), a.move);
    const Point q = shifted(v, outward(b), b.move);
    if (a.move < b.move * cosine || b.move < a.move * cosine)
        return {p, q};
    const double half_tangent = sine / (1 + cosine);
    const double beyond =
        a.move == b.move ? a.move * half_tangent : (b.move - a.move * cosine) / sine;
    const Point crossing = shifted(p, a.way, beyond);
    const double far = 2 * std::max(a.move, b.move);
    const Point out{crossing.x - v.x, crossing.y - v.y};
    // Not a number where the side turns right back.
    if (dot(out, out) <= far * far)
        return {p, crossing, q};
    return squared(v, a, b, far);
}

std::vector<Point> corner(Point v, const Side2& a, const Side2& b) {
    if (a.move == 0 && b.move == 0)
        return {v};
    const double sine = cross(a.way, b.way);
    if (sine > 0 || (sine == 0 && dot(a.way, b.way) < 0))
        return outward_corner(v, a, b);
    return {shifted(v, outward(a), a.move), v, shifted(v, outward(b), b.move)};
}

/// How far the film added at the corner between the sides reaches along `way` beyond it.
double reach(const Side2& before, const Side2& after, Point way) {
    if (cross(before.way, after.way) <= 0)
        return 0;
    double farthest = 0;
    for (const Point& p : corner(before.to, before, after))
        farthest = std::max(farthest, dot({p.x - before.to.x, p.y - before.to.y}, way));
    return farthest;
}

Point reversed(Point way) {
    return {-way.x, -way.y};
}

/// The strip along one side, counter-clockwise; it begins a little outside, so that nothing is left
/// between it and the curve of the tucks.
Ring strip(const Side2& before, const Side2& side, const Side2& after) {
    constexpr double outside = 0.002;
    const Point a = shifted(side.from, side.way, -reach(before, side, reversed(side.way)));
    const Point b = shifted(side.to, side.way, reach(side, after, side.way));
    const Point out = outward(side);
    return on_grid(std::vector<Point>{shifted(a, out, outside), shifted(b, out, outside),
                                      shifted(b, out, -side.stop), shifted(a, out, -side.stop)});
}

/// Between two strips at an inward corner: by the rule of corners, seen from inside.
Ring between_strips(const Side2& before, const Side2& after) {
    const Side2 a{after.to, after.from, reversed(after.way), after.stop, 0};
    const Side2 b{before.to, before.from, reversed(before.way), before.stop, 0};
    std::vector<Point> points{before.to};
    for (const Point& p : corner(before.to, a, b))
        points.push_back(p);
    return on_grid(points);
}

std::vector<Ring> strips(const std::vector<Side2>& sides) {
    std::vector<Ring> rings;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const Side2& before = sides[(i + sides.size() - 1) % sides.size()];
        const Side2& after = sides[(i + 1) % sides.size()];
        if (sides[i].stop == 0)
            continue;
        rings.push_back(strip(before, sides[i], after));
        if (after.stop > 0 && cross(sides[i].way, after.way) < 0)
            rings.push_back(between_strips(sides[i], after));
    }
    return rings;
}

std::vector<Side2> outline_sides(const Blank& blank, const Asked& asked) {
    std::vector<Side2> sides;
    const std::vector<Point>& ring = blank.outline.points;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point a = ring[i];
        const Point b = ring[i + 1 == ring.size() ? 0 : i + 1];
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        const AtEdge& edge = asked.edges[static_cast<std::size_t>(blank.outline.edge[i])];
        if (length > 0)
            sides.push_back(
                {a, b, {(b.x - a.x) / length, (b.y - a.y) / length}, mm(edge.move), mm(edge.stop)});
    }
    return sides;
}

Ring curve(const std::vector<Side2>& sides) {
    std::vector<Point> points;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const Side2& before = sides[(i + sides.size() - 1) % sides.size()];
        for (const Point& p : corner(sides[i].from, before, sides[i]))
            points.push_back(p);
    }
    return on_grid(points);
}

/// What is cut out of an opening: its rings run clockwise, so the curve is turned round.
Rim left_of_opening(const BlankOpening& opening, Um move) {
    const std::vector<Point>& ring = opening.ring.points;
    Ring around = moved_curve(ring, std::vector<double>(ring.size(), mm(move)));
    std::reverse(around.begin(), around.end());
    return Rim(std::vector<Ring>{std::move(around)});
}

Rim recess(const BlankInlay& inlay) {
    return Rim(std::vector<Ring>{on_grid(std::vector<Point>{
        inlay.low, {inlay.high.x, inlay.low.y}, inlay.high, {inlay.low.x, inlay.high.y}})});
}

} // namespace

GridPoint nearest(Point p) {
    return {std::llround(p.x * um_per_mm), std::llround(p.y * um_per_mm)};
}

Ring moved_curve(const std::vector<Point>& ring, const std::vector<double>& moves) {
    return curve(sides_of(ring, moves));
}

Wanted::Wanted(const Panel& panel, const Blank& blank, const Asked& asked)
    : tucked_(std::vector<Ring>{curve(outline_sides(blank, asked))}),
      stops_(strips(outline_sides(blank, asked))) {
    for (std::size_t i = 0; i < blank.openings.size(); ++i) {
        if (asked.openings[i].covered)
            continue;
        cut_out_.push_back(left_of_opening(blank.openings[i], asked.openings[i].move));
        if (panel.openings[i].cut == OpeningCut::at_table)
            at_table_.push_back(cut_out_.back());
    }
    for (const BlankInlay& inlay : blank.inlays)
        cut_out_.push_back(recess(inlay));
}

bool Wanted::in_any(const std::vector<Rim>& rims, GridPoint p) {
    return std::any_of(rims.begin(), rims.end(),
                       [&](const Rim& rim) { return rim.winding(p) > 0; });
}

bool Wanted::in_sheet(GridPoint p) const {
    return tucked_.winding(p) > 0 && stops_.winding(p) <= 0;
}

std::vector<const Rim*> Wanted::rims() const {
    std::vector<const Rim*> out{&tucked_, &stops_};
    for (const Rim& rim : cut_out_)
        out.push_back(&rim);
    return out;
}

} // namespace pelt::verify
