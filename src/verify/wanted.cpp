// SPDX-License-Identifier: MIT
#include "verify/wanted.hpp"

#include "verify/sides.hpp"
#include "verify/stop_strips.hpp"

#include <algorithm>
#include <cmath>

namespace pelt::verify {
namespace {

Ring on_grid(const std::vector<Point>& points) {
    Ring ring;
    for (const Point& p : points)
        ring.push_back(nearest(p));
    return ring;
}

double mm(Um length) {
    return static_cast<double>(length) / um_per_mm;
}

std::vector<MovedSide> outline_sides(const Blank& blank, const Asked& asked) {
    std::vector<double> moves;
    std::vector<double> stops;
    for (const int edge : blank.outline.edge) {
        const AtEdge& at = asked.edges[static_cast<std::size_t>(edge)];
        moves.push_back(mm(at.move));
        stops.push_back(mm(at.stop));
    }
    return moved_sides(blank.outline, moves, stops);
}

std::vector<Ring> strips(const std::vector<MovedSide>& sides) {
    std::vector<Ring> rings;
    for (const std::vector<Point>& figure : stop_strips(sides))
        rings.push_back(on_grid(figure));
    return rings;
}

Ring curve(const std::vector<MovedSide>& sides) {
    std::vector<Point> points;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const MovedSide& before = sides[(i + sides.size() - 1) % sides.size()];
        for (const Point& p : corner_points(corner_between(before, sides[i])))
            points.push_back(p);
    }
    return on_grid(points);
}

/// What is cut out of an opening: its rings run clockwise, so the curve is turned round.
Rim left_of_opening(const BlankOpening& opening, Um move) {
    const std::vector<double> moves(opening.ring.points.size(), mm(move));
    Ring around = curve(moved_sides(opening.ring, moves));
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
